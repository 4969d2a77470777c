using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What the shop pays and asks, in its currency; null where it does not say.</summary>
public sealed record PricesShop(
    string Currency,
    ImmutableDictionary<MaterialFamily, double> MetalPerKilogram,
    double? RodPerKilogram,
    double? GasPerCubicMetre,
    double? LaserPerMinute,
    double? Fitting,
    double? LabourPerHour)
{
    /// <summary>Whether there is no price at all.</summary>
    public bool IsEmpty => MetalPerKilogram.IsEmpty
        && (RodPerKilogram ?? GasPerCubicMetre ?? LaserPerMinute ?? Fitting ?? LabourPerHour) is null;

    public double? Metal(MaterialFamily family) => MetalPerKilogram.TryGetValue(family, out var price) ? price : null;

    internal static PricesShop Of(Section section)
    {
        double? Price(string key) => section.Has(key) ? section.Number(key) : null;
        return new(
            section.Text("currency") ?? "",
            Enum.GetValues<MaterialFamily>().Where(family => section.Has(ShopKeys.PriceOf(family)))
                .ToImmutableDictionary(family => family, family => section.Number(ShopKeys.PriceOf(family))),
            Price("rod_per_kg"),
            Price("gas_per_m3"),
            Price("laser_per_minute"),
            Price("fitting"),
            Price("labour_per_hour"));
    }
}
