using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Sites;

namespace Vessel.Planning;

/// <summary>The day's work: how each weld is laid, in what order, and what it takes. For one assembly in its shop.</summary>
/// <param name="procedures">Procedures in the order of the welds' numbers.</param>
/// <param name="purge">Purge of the closed vessel.</param>
/// <param name="order">Order constraints between tasks.</param>
/// <param name="steps">The day's list.</param>
/// <param name="kerf">Width of the cut that flats are nested for, mm.</param>
public sealed class Plan(
    Assembly assembly, ImmutableArray<WeldProcedure> procedures, Purge purge, WorkOrder order, ImmutableArray<Step> steps, double kerf)
{
    public Assembly Assembly { get; } = assembly;

    public ImmutableArray<WeldProcedure> Procedures { get; } = procedures;

    public Purge Purge { get; } = purge;

    public WorkOrder Order { get; } = order;

    public ImmutableArray<Step> Steps { get; } = steps;

    private readonly Lazy<Timing> _timing = new(() => Timing.Of(assembly, order, procedures, purge));

    /// <summary>How long it takes.</summary>
    public Timing Timing => _timing.Value;

    private readonly Lazy<ImmutableArray<SheetStock>> _sheets = new(() =>
    [
        .. Nest.Of(assembly.Parts, assembly.Design.Shop.Stock, assembly.Design.Quantity, kerf).AsParallel().AsOrdered()
            .Select(nest => new SheetStock(nest, NestRectangle.Of(nest))),
    ]);

    /// <summary>Flats on sheets, one for each metal and thickness.</summary>
    public ImmutableArray<SheetStock> Sheets => _sheets.Value;

    /// <summary>Tubes and bars in stock lengths, by section.</summary>
    public ImmutableArray<BarStock> Bars => BarStock.Of(Assembly.Parts, Assembly.Design.Shop.Stock, Assembly.Design.Quantity);

    /// <summary>How many tacks hold a port.</summary>
    public int TacksOf(PortSite site) => Tacks.Of(Assembly.Welds.Single(weld => weld.Joint.Path == site.Port.Path)).Places.Length;

    /// <summary>For the test at the end of the day.</summary>
    public LeakKit LeakKit => LeakKit.Of(Assembly.Design, Assembly.Welds.Select(weld => weld.Joint));

    private readonly Lazy<ImmutableArray<TorchAccess>> _access = new(() => TorchAccess.Of(assembly, order, procedures));

    /// <summary>How each weld is reached, in the order in which they are laid.</summary>
    public ImmutableArray<TorchAccess> Access => _access.Value;

    /// <param name="kerf">Width of the cut that flats are nested for, mm.</param>
    public static Plan Of(Assembly assembly, double kerf = 0)
    {
        var parts = assembly.Parts.ToDictionary(part => part.Id);
        ImmutableArray<WeldProcedure> welds =
        [
            .. assembly.Welds.Select(weld => WeldProcedure.Of(
                weld, assembly.MetalsOf(weld.Joint), parts[weld.Joint.Between[0]], parts[weld.Joint.Between[1]], assembly.Design)),
        ];
        var order = WorkOrder.Of(assembly);
        var purge = Purge.Of(assembly);
        return new(assembly, welds, purge, order, Step.Of(order, assembly, welds, purge), kerf);
    }
}
