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

    /// <summary>Prices of fittings, by the name of their size.</summary>
    public ImmutableDictionary<string, double> Fittings { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Prices of spun heads: the largest blank, mm, that each price holds for, upward.</summary>
    public ImmutableArray<(double UpTo, double Price)> Spinnings { get; init; } = [];

    /// <summary>Least that is charged for each size of sheet, tube or bar.</summary>
    public double MetalLeast { get; init; }

    /// <summary>Least that is charged for a job of the laser.</summary>
    public double LaserLeast { get; init; }

    /// <summary>Added to the cost, as a share of it.</summary>
    public double Margin { get; init; }

    /// <summary>Added to cost and margin, as a share of both.</summary>
    public double Tax { get; init; }

    /// <summary>Price of a fitting of that size; null where none is known.</summary>
    public double? FittingOf(string size) => Fittings.TryGetValue(size, out var price) ? price : Fitting;

    /// <summary>Price of a head spun from a blank of that diameter, mm; null where none is known.</summary>
    public double? SpinningOf(double blank) =>
        Spinnings.Where(price => price.UpTo >= blank - 1e-9).Select(price => (double?)price.Price).FirstOrDefault() ?? Spinning;

    /// <summary>Whether there is no price at all.</summary>
    public bool IsEmpty => MetalPerKilogram.IsEmpty && Fittings.IsEmpty && Spinnings.IsEmpty
        && (RodPerKilogram ?? GasPerCubicMetre ?? LaserPerMinute ?? Fitting ?? PackingPerKilogram ?? Spinning ?? Finish
            ?? LabourPerHour) is null;

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
            Fittings = section.Items("fittings").Where(item => item.Thread("size") is not null)
                .GroupBy(item => item.Thread("size")!.Name)
                .ToImmutableDictionary(group => group.Key, group => group.Last().Number("price")),
            Spinnings =
                [.. section.Items("spinnings").Select(item => (item.Number("up_to"), item.Number("price"))).OrderBy(price => price.Item1)],
            MetalLeast = Price("metal_least") ?? 0,
            LaserLeast = Price("laser_least") ?? 0,
            Margin = section.Number("margin"),
            Tax = section.Number("tax"),
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
