using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>The time of a whole vessel; minutes.</summary>
/// <param name="Hand">Time with parts cut by hand.</param>
/// <param name="Laser">Time with parts cut by laser, the machine's own minutes included.</param>
public sealed record Timing(ImmutableArray<TimeItem> Items, Estimate Hand, Estimate Laser)
{
    private const string SetUpTask = "set-up";

    internal static Timing Of(Assembly assembly, WorkOrder order, ImmutableArray<WeldProcedure> welds, Purge purge)
    {
        var shop = assembly.Design.Shop;
        var procedures = welds.ToDictionary(weld => weld.Joint.Number);
        var parts = assembly.Parts.ToDictionary(WorkTask.Making);
        var tacked = order.Tasks.SelectMany(task => task.Tacked).Select(joint => joint.Number).ToHashSet();
        ImmutableArray<TimeItem> items =
        [
            Item(shop, SetUpTask, StepKind.Make, HandRates.SetUp, 1),
            .. order.Tasks.SelectMany(task => task switch
            {
                { Kind: WorkKind.Make } => new MakeTimes(shop, parts[task.Id]).Items(),
                { Weld: { } weld } => OfWeld(procedures[weld.Number], task, shop, purge, tacked.Contains(weld.Number)),
                { Kind: WorkKind.Tack } => OfTacks([.. task.Tacked.Select(joint => procedures[joint.Number])], task, shop),
                _ => Other(task, assembly.Design),
            }),
        ];
        return new(items, Sum(items.Select(item => item.Hand)), Sum(items.Select(item => item.Laser)));
    }

    /// <summary>Time to set up the bench, once for all vessels that are made together.</summary>
    public Estimate SetUp => Sum(Items.Where(item => item.Task == SetUpTask).Select(item => item.Hand));

    /// <summary>Time of one step, by hand and on the laser; a weld's task has several steps.</summary>
    public (Estimate Hand, Estimate Laser) Of(Step step)
    {
        var items = Items.Where(item => item.Task == step.Task.Id && item.Step == step.Kind).ToList();
        return (Sum(items.Select(item => item.Hand)), Sum(items.Select(item => item.Laser)));
    }

    /// <summary>All low figures together, all likely, all high: the range if one shop is quick, or slow, at everything.</summary>
    internal static Estimate Sum(IEnumerable<Estimate?> estimates)
    {
        var all = estimates.OfType<Estimate>().ToList();
        return new(
            all.Sum(e => e.Low), all.Sum(e => e.Likely), all.Sum(e => e.High),
            "sum of the operations: all low, all likely, all high");
    }

    internal static TimeItem Item(Shop shop, string task, StepKind step, WorkRate rate, double quantity)
    {
        var one = shop.Rates[rate.Name];
        var time = rate.Unit == "min"
            ? new Estimate(quantity * one.Low, quantity * one.Likely, quantity * one.High, one.Basis)
            : new Estimate(quantity / one.High, quantity / one.Likely, quantity / one.Low, one.Basis);
        var each = rate.Unit == "min" ? "min each" : rate.Unit;
        return new(
            task, step, rate.Name, quantity, time, time,
            FormattableString.Invariant($"{one.Low:0.###} to {one.High:0.###}, likely {one.Likely:0.###} {each}: {one.Basis}"));
    }

    private static IEnumerable<TimeItem> OfWeld(WeldProcedure weld, WorkTask task, Shop shop, Purge purge, bool isTacked)
    {
        if (!isTacked)
        {
            foreach (var item in OfTacks([weld], task, shop))
                yield return item;
        }

        var arc = weld.Passes * weld.Weld.Length / weld.Travel.Value;
        yield return Fixed(task, "arc", weld.Weld.Length, new(arc, arc, arc, weld.Travel.Source));
        var share = shop.Welding.ArcShare;
        yield return Fixed(task, "stops", 1, new(
            (arc / share.High) - arc, (arc / share.Likely) - arc, (arc / share.Low) - arc,
            FormattableString.Invariant($"arc share {share.Low:0.##} to {share.High:0.##}, likely {share.Likely:0.##}: {share.Basis}")));
        if (weld is { Purged: true, Role: WeldRole.HeadSeam })
        {
            yield return Fixed(task, "purge", purge.Gas, new(
                purge.Minutes, purge.Minutes, 2 * purge.Minutes, "perfect mixing; twice that where corners are dead"));
        }

        if (weld.CoolBelow is not null)
            yield return Item(shop, task.Id, StepKind.Cool, HandRates.Cool, 1);
        yield return Item(shop, task.Id, StepKind.Check, HandRates.Check, 1);
    }

    private static IEnumerable<TimeItem> OfTacks(ImmutableArray<WeldProcedure> welds, WorkTask task, Shop shop)
    {
        yield return Item(shop, task.Id, StepKind.Fit, HandRates.FitUp, welds.Length);
        var tacks = welds.Sum(weld => Tacks.Of(weld.Weld).Places.Length);
        if (tacks > 0)
            yield return Item(shop, task.Id, StepKind.Tack, HandRates.Tack, tacks);
    }

    private static TimeItem Fixed(WorkTask task, string operation, double quantity, Estimate time) =>
        new(task.Id, StepKind.Weld, operation, quantity, time, time, time.Basis);

    private static IEnumerable<TimeItem> Other(WorkTask task, VesselDesign design) => Other(task, design.Shop, design.Finish);

    private static IEnumerable<TimeItem> Other(WorkTask task, Shop shop, Finish finish) => task.Kind switch
    {
        WorkKind.Round => [Item(shop, task.Id, StepKind.Round, HandRates.Round, 1)],
        WorkKind.Fit => [Item(shop, task.Id, StepKind.Fit, HandRates.FitLoose, 1)],
        WorkKind.Plug => [Item(shop, task.Id, StepKind.Plug, HandRates.Plug, 1)],
        WorkKind.Chase => [Item(shop, task.Id, StepKind.Chase, HandRates.Chase, 1)],
        WorkKind.Dress => [Item(shop, task.Id, StepKind.Dress, HandRates.Dress, 1)],
        WorkKind.Clean => [Item(shop, task.Id, StepKind.Clean, HandRates.CleanInside, 1)],
        WorkKind.Test => [Item(shop, task.Id, StepKind.Test, HandRates.LeakTest, 1)],
        WorkKind.Finish => [Item(shop, task.Id, StepKind.Finish, OfFinish(finish), 1)],
        _ => [],
    };

    private static WorkRate OfFinish(Finish finish) => finish switch
    {
        Finish.Passivated => HandRates.Passivate,
        Finish.Painted => HandRates.Paint,
        _ => HandRates.SendOut,
    };
}
