using System.Collections.Immutable;
using System.Globalization;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Every key of the shop file: what holds for all vessels that one shop makes.</summary>
public static class ShopKeys
{
    public static KeyMap Welding { get; } = new("the shop's welding",
    [
        new("rod_length", KeyKind.Length, "Of a whole filler rod")
        {
            Default = "36 in", Range = new(100, 2000), Source = Rods.Source,
        },
        new("rod_stub", KeyKind.Length, "Stub of each rod that is thrown away")
        {
            Default = "2.5 in", Range = new(0, 90), Source = Rods.StubSource,
        },
        new("gap_aim", KeyKind.Ratio, "Root opening of a square cut to aim for, as a share of the wall")
        {
            Default = "0.25", Range = new(0.01, 1), Source = WeldingRates.Practice,
        },
        new("gap_most", KeyKind.Ratio, "Root opening that is refused, as a share of the wall")
        {
            Default = "0.5", Range = new(0.01, 2), Source = WeldingRates.Practice,
        },
        new("gap_limit", KeyKind.Length, "Root opening that is refused on any wall")
        {
            Default = "1 mm", Range = new(0.05, 10), Source = WeldingRates.Practice,
        },
        new("face_allowance", KeyKind.Length, "Left on a bung's sealing face, to be machined after welding")
        {
            Default = "0.3 mm", Range = new(0, 5), Source = WeldingRates.Practice,
        },
        new("purge_flow", KeyKind.Flow, "Argon into a closed vessel before its root is welded")
        {
            Default = "5 L/min", Range = new(0.5, 50), Source = $"{WeldingRates.Practice}: low and steady, never under pressure",
        },
        new("purge_oxygen", KeyKind.Ratio, "Oxygen that may be left when the arc is struck, ppm")
        {
            Default = "100", Range = new(1, 20_000), Source = "100 ppm for a bright root, 1000 in general: weld purging guides",
        },
        .. WeldingRates.All.Select(Rate),
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap Torch { get; } = new("the shop's torch",
    [
        new("cup_diameter", KeyKind.Length, "Outside of the gas cup; a larger one is tried where a weld's electrode asks for it")
        {
            Default = "12.5 mm", Range = new(4, 60), Source = $"{WeldingRates.Practice}: a cup of 3/8 in bore (number 6) on a small torch",
        },
        new("stick_out", KeyKind.Length, "From the cup's edge to the root: electrode and arc")
        {
            Default = "13 mm", Range = new(3, 60), Source = $"{WeldingRates.Practice}: up to a cup's bore with a gas lens, and the arc",
        },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap Rates { get; } = new("the shop's times", [.. HandRates.All.Select(Rate)]) { MayBeEmpty = true };

    public static KeyMap Stock { get; } = new("the shop's stock",
    [
        Size("tube_length", "Of a tube as bought", "6000 mm", new(200, 20_000)),
        Size("bar_length", "Of a bar as bought", "3000 mm", new(200, 20_000)),
        Size("saw_kerf", "Width of the saw's cut", "1.5 mm", new(0, 10)),
        Size("grip_loss", "End of each tube or bar that stays in the saw's vice", "60 mm", new(0, 150)),
        Size("sheet_length", "Of a sheet as bought, along its grain", "2500 mm", new(200, 20_000)),
        Size("sheet_width", "Of a sheet as bought", "1250 mm", new(200, 5000)),
        Size("sheet_margin", "Kept from a sheet's edges", "10 mm", new(0, 50)),
        Size("spacing", "Kept between pieces on a sheet", "5 mm", new(0.5, 50)),
        Size("cut_step", "Steps to which tube, bar and part of a sheet are cut for sale, rounded up; 0 for none", "0 mm", new(0, 1000)),
        Size("least_cut", "Shortest piece of tube or bar that is sold; 0 for any", "0 mm", new(0, 6000)),
    ])
    {
        MayBeEmpty = true,
    };

    private static KeyMap FittingPrice { get; } = new("the price of a fitting",
    [
        new("size", KeyKind.Thread, "Of the fitting, as a port names it: 'dash 20'") { IsRequired = true },
        new("price", KeyKind.Ratio, "Of one of them") { IsRequired = true, Range = MostPrice },
    ]);

    private static KeyMap SpinningPrice { get; } = new("the price of a spun head",
    [
        new("up_to", KeyKind.Length, "Diameter of the largest blank that it holds for") { IsRequired = true, Range = new(1, 10_000) },
        new("price", KeyKind.Ratio, "Of one of them") { IsRequired = true, Range = MostPrice },
    ]);

    public static KeyMap Prices { get; } = new("the shop's prices",
    [
        new("currency", KeyKind.Text, "In which the prices are") { DefaultRule = "not said" },
        .. Enum.GetValues<MaterialFamily>()
            .Select(family => Price(PriceOf(family), $"Of a kilogram of {Of(family).Replace('_', ' ')}, sheet or tube")),
        Choice("sheet_by", "Charged of sheets: each blank, the rectangle that holds all, the width so far, or whole ones",
            "blank", "blank", "rectangle", "used", "whole"),
        Choice("length_by", "Charge for a tube or bar: by the pieces cut off with their kerfs, or by whole lengths", "cut", "cut", "whole"),
        Price("rod_per_kg", "Of a kilogram of filler rod"),
        Price("gas_per_m3", "Of a cubic metre of argon"),
        Price("laser_per_minute", "Of a minute of the laser"),
        Price("metal_least", "Least that is charged for each size of sheet, tube or bar"),
        Price("laser_least", "Least that is charged for a job of the laser"),
        new("fittings", KeyKind.List,
            "Of fittings by their size; others cost what 'fitting' says") { DefaultRule = "none", Map = FittingPrice },
        Price("fitting", "Of one fitting that is bought"),
        Price("packing_per_kg", "Of a kilogram of packing"),
        new("spinnings", KeyKind.List,
            "Of spun heads by their blank; larger ones cost what 'spinning' says") { DefaultRule = "none", Map = SpinningPrice },
        Price("spinning", "Of one head spun from its blank"),
        Price("finish", "Of the finish of one vessel, where it is sent out"),
        Price("labour_per_hour", "Of an hour at the bench"),
        Share("margin", "Added to the cost, as a share of it"),
        Share("tax", "Added to cost and margin, as a share of both"),
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap Rolls { get; } = new("the shop's rolls",
    [
        new("least_diameter", KeyKind.Length, "Inside diameter of the tightest cylinder that they make")
        {
            DefaultRule = "not known", Range = new(5, 10_000),
        },
        new("flat_end", KeyKind.Length, "Length left flat at each end of a sheet: about half their pitch")
        {
            DefaultRule = "not known", Range = new(0, 500),
        },
        Choice("ends", "Treatment of flat ends: bent beforehand, or added to the blank and trimmed off", "pre_bend", "pre_bend", "trim"),
        new("seam_shrinkage", KeyKind.Length, "Shrinkage of a long seam across its weld, added to the blank")
        {
            Default = "0 mm", Range = new(0, 5),
            Source = $"{WeldingRates.Practice}: a butt draws in by about a tenth of its width; measure a trial piece",
        },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap Bends { get; } = new("the shop's bends",
    [
        .. Enum.GetValues<MaterialFamily>().Select(Neutral),
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap File { get; } = new("the shop file",
    [
        new("shop", KeyKind.Text, "Name of the shop") { DefaultRule = "no name" },
        new("units", KeyKind.Choice, "Of bare lengths") { Choices = ["mm", "in"], Default = "mm" },
        new("welding", KeyKind.Mapping, "Rods and welding times") { DefaultRule = "its own defaults", Map = Welding },
        new("torch", KeyKind.Mapping,
            "Size of the torch, for whether it comes to a joint") { DefaultRule = "its own defaults", Map = Torch },
        new("rates", KeyKind.Mapping, "Times of handwork") { DefaultRule = "its own defaults", Map = Rates },
        new("stock", KeyKind.Mapping,
            "Stock that is bought, and the allowances for cutting it") { DefaultRule = "its own defaults", Map = Stock },
        new("rolls", KeyKind.Mapping,
            "Least diameter of the rolls, and the flat ends they leave") { DefaultRule = "its own defaults", Map = Rolls },
        new("prices", KeyKind.Mapping,
            "Prices for a quote; an item without a price is in no total") { DefaultRule = "none: no quote", Map = Prices },
        new("bends", KeyKind.Mapping, "Where a bend's neutral line lies, by metal: K measured on the shop's own brake")
        {
            DefaultRule = "its own defaults", Map = Bends,
        },
    ]);

    /// <summary>The key of a metal family's price.</summary>
    public static string PriceOf(MaterialFamily family) => $"{Of(family)}_per_kg";

    /// <summary>The key of a metal family: <c>mild_steel</c>.</summary>
    public static string Of(MaterialFamily family) => family switch
    {
        MaterialFamily.Aluminium => "aluminium",
        MaterialFamily.Stainless => "stainless",
        MaterialFamily.MildSteel => "mild_steel",
        _ => throw new ArgumentOutOfRangeException(nameof(family)),
    };

    /// <summary>One figure, the likely one: low and high keep their proportion to it.</summary>
    private static Key Rate(WorkRate rate) => new(rate.Name, KeyKind.Ratio, $"{rate.What}, {rate.Unit}")
    {
        Default = Text(rate.Likely),
        Range = rate.Unit == "share" ? new(0.01, 1) : new(0.001 * rate.Likely, 1000 * rate.Likely),
        Source = $"{Text(rate.Low)} to {Text(rate.High)}: {rate.Source}",
    };

    private static Key Price(string name, string what) =>
        new(name, KeyKind.Ratio, what) { DefaultRule = "not known", Range = MostPrice };

    private static KeyRange MostPrice => new(0, 1_000_000);

    private static Key Share(string name, string what) =>
        new(name, KeyKind.Ratio, what) { Default = "0", Range = new(0, 10), Source = "a choice, no figure" };

    private static Key Choice(string name, string what, string usual, params string[] choices) =>
        new(name, KeyKind.Choice, what) { Choices = [.. choices], Default = usual, Source = "a choice, no figure" };

    private static Key Size(string name, string what, string usual, KeyRange range) =>
        new(name, KeyKind.Length, what) { Default = usual, Range = range, Source = WeldingRates.Practice };

    private static Key Neutral(MaterialFamily family)
    {
        var usual = Vessel.Stock.Bends.NeutralLine(family);
        return new(Of(family), KeyKind.Ratio, "K, as a share of the thickness from the inside")
        {
            Default = Text(usual.Value),
            Range = CommonKeys.NeutralLine,
            Source = usual.Source,
        };
    }

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
