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
    double? PackingPerKilogram,
    double? Spinning,
    double? Finish,
    double? LabourPerHour)
{
    public SheetCharge SheetBy { get; init; }

    /// <summary>Whether tubes and bars are charged by whole lengths.</summary>
    public bool WholeLengths { get; init; }

    /// <summary>Whether there is no price at all.</summary>
    public bool IsEmpty => MetalPerKilogram.IsEmpty
        && (RodPerKilogram ?? GasPerCubicMetre ?? LaserPerMinute ?? Fitting ?? PackingPerKilogram ?? Spinning ?? Finish ?? LabourPerHour) is null;

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
            Price("packing_per_kg"),
            Price("spinning"),
            Price("finish"),
            Price("labour_per_hour"))
        {
            SheetBy = section.Text("sheet_by") switch
            {
                "rectangle" => SheetCharge.Rectangle,
                "used" => SheetCharge.Used,
                "whole" => SheetCharge.Whole,
                _ => SheetCharge.Blank,
            },
            WholeLengths = section.Text("length_by") == "whole",
        };
    }
}

/// <summary>What of a sheet a quote charges.</summary>
public enum SheetCharge
{
    /// <summary>The blank of each piece.</summary>
    Blank,

    /// <summary>The smallest rectangle that holds all pieces; what is used where one sheet does not hold them.</summary>
    Rectangle,

    /// <summary>The whole width as far as it is used.</summary>
    Used,

    /// <summary>Every sheet that is touched.</summary>
    Whole,
}
