using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Reader that makes the shop from the text of a shop file.</summary>
public static class ShopReader
{
    /// <summary>The shop, or every fault of the file, sorted by place; each fault has its place. Never throws for what
    /// stands in the file.</summary>
    public static Outcome<Shop> Read(string yamlText)
    {
        var loaded = YamlLoader.Load(yamlText);
        if (loaded.Top is not { } top)
            return FaultList.Sorted(loaded.Faults.Select(InShop));
        var faults = loaded.Faults.ToList();
        var units = (top.Find("units")?.Value as YamlScalar)?.Text == "in" ? UserUnits.Inches : UserUnits.Millimetres;
        var values = new ValueReader(units, ImmutableDictionary<string, Quantity?>.Empty, faults);
        var file = new Binder(values, faults).Bind(top, ShopKeys.File);
        return faults.Count == 0
            ? ShopBuilder.Build(file, units)
            : FaultList.Sorted(FaultList.Placed(faults, Places.Of(top)).Select(InShop));
    }

    private static Fault InShop(Fault fault) => fault with
    {
        At = fault.At!.Value with { Setting = Span.InShop },
        Remedy = fault.Code == FaultCodes.FileEmpty ? "Begin with 'shop: <name>', or delete the file." : fault.Remedy,
    };
}
