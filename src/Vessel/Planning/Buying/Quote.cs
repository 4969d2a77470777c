using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>One line of a quote; only what the shop has a price for.</summary>
/// <param name="Quantity">Likely, by hand; by laser where the line is the laser's.</param>
/// <param name="Price">Price of one unit, in the shop's currency.</param>
/// <param name="Hand">Amount with parts cut by hand; null where that way does not need it.</param>
/// <param name="Laser">Amount with parts cut by laser; null where that way does not need it.</param>
public sealed record QuoteLine(string What, double Quantity, string Unit, double Price, Estimate? Hand, Estimate? Laser);

/// <summary>What the vessel costs at the shop's own prices, by hand and by laser side by side.</summary>
/// <param name="NotPriced">What has no price and is in no total.</param>
public sealed record Quote(
    string Currency, ImmutableArray<QuoteLine> Lines, Estimate Hand, Estimate Laser, ImmutableArray<string> NotPriced)
{
    /// <summary>How many are made at once; all amounts are for all of them.</summary>
    public int Vessels { get; init; } = 1;

    /// <summary>Added to the cost, as a share of it.</summary>
    public double MarginShare { get; init; }

    /// <summary>Added to cost and margin, as a share of both.</summary>
    public double TaxShare { get; init; }

    /// <summary>
    /// What follows the total: margin, tax, what is to be paid, and of several vessels what each comes to; none of what there is none.
    /// </summary>
    public IEnumerable<(string What, Estimate Hand, Estimate Laser)> AfterTotal
    {
        get
        {
            (string What, Estimate Hand, Estimate Laser) Share(string what, double factor) =>
                (what, Scaled(Hand, factor), Scaled(Laser, factor));
            if (MarginShare > 0)
                yield return Share(Text($"margin, {100 * MarginShare:0.##} %"), MarginShare);
            if (TaxShare > 0)
                yield return Share(Text($"tax, {100 * TaxShare:0.##} %"), (1 + MarginShare) * TaxShare);
            if (MarginShare > 0 || TaxShare > 0)
                yield return Share("to be paid", PaidOverCost);
            if (Vessels > 1)
                yield return Share($"each of {Vessels.ToString(CultureInfo.InvariantCulture)}", PaidOverCost / Vessels);
        }
    }

    /// <summary>What is to be paid over the cost.</summary>
    public double PaidOverCost => (1 + MarginShare) * (1 + TaxShare);

    private const double GramsPerKilogram = 1000;

    private const double MinutesPerHour = 60;

    private const double LitresPerCubicMetre = 1000;

    /// <summary>Gas before and after the arc as a share of that with it, low to high. Common practice, no source.</summary>
    private const double LeastFlow = 0.25;
    private const double MostFlow = 0.5;

    /// <summary>Null where the shop gives no price at all.</summary>
    public static Quote? Of(Plan plan)
    {
        var prices = plan.Assembly.Design.Shop.Prices;
        if (prices.IsEmpty)
            return null;
        var all = Needs(plan, prices).ToList();
        ImmutableArray<QuoteLine> lines = [.. all.Where(need => need.Price is not null).Select(need => need.Line())];
        return new(
            prices.Currency,
            lines,
            Timing.Sum(lines.Select(line => line.Hand)),
            Timing.Sum(lines.Select(line => line.Laser)),
            [.. all.Where(need => need.Price is null).Select(need => need.What)])
        {
            Vessels = plan.Assembly.Design.Quantity,
            MarginShare = prices.Margin,
            TaxShare = prices.Tax,
        };
    }

    private static IEnumerable<Need> Needs(Plan plan, PricesShop prices) =>
        [.. Metal(plan, prices), .. Work(plan, prices), .. Bought(plan, prices)];

    private static IEnumerable<Need> Metal(Plan plan, PricesShop prices)
    {
        foreach (var (metal, mass) in Sheets(plan, prices.SheetBy))
        {
            yield return new(
                Text($"{metal.Material.Name} sheet {metal.Thickness:0.##} mm, {Charged(prices.SheetBy)}"), "kg",
                prices.Metal(metal.Material.Family), Exactly(mass / GramsPerKilogram), Exactly(mass / GramsPerKilogram))
            {
                Least = prices.MetalLeast,
            };
        }

        foreach (var bar in plan.Bars)
        {
            var mass = Exactly((prices.WholeLengths ? bar.WholeMass : bar.Mass) / GramsPerKilogram);
            var size = bar.Wall > 0 ? Text($"{bar.Diameter:0.##} x {bar.Wall:0.##}") : Text($"{bar.Diameter:0.##}");
            yield return new(
                $"{bar.Material.Name} {bar.Form} {size} mm{(prices.WholeLengths ? ", whole lengths" : "")}", "kg",
                prices.Metal(bar.Material.Family), mass, mass)
            {
                Least = prices.MetalLeast,
            };
        }
    }

    private static IEnumerable<Need> Work(Plan plan, PricesShop prices)
    {
        var vessels = plan.Assembly.Design.Quantity;
        var laser = Timing.Sum(plan.Timing.Items.Where(item => item.Operation == "laser").Select(item => item.Laser));
        yield return new("laser cutting", "min", prices.LaserPerMinute, null, Scaled(laser, vessels)) { Least = prices.LaserLeast };
        foreach (var rods in plan.Procedures.GroupBy(weld => weld.Filler).OrderBy(group => group.Key.Name, StringComparer.Ordinal))
        {
            var mass = Scaled(Timing.Sum(rods.Select(weld => (Estimate?)weld.FillerMass)), vessels / GramsPerKilogram);
            yield return new($"{rods.Key.Name} rod", "kg", prices.RodPerKilogram, mass, mass);
        }

        var gas = Scaled(Gas(plan.Procedures.Where(weld => !weld.Settings.HasHelium), Purging(plan)), vessels);
        yield return new("argon", "m3", prices.GasPerCubicMetre, gas, gas);
        // It costs several times what argon does, and no shop file has its price.
        if (plan.Procedures.Any(weld => weld.Settings.HasHelium))
            yield return new("argon/helium", "m3", null, null, null);
        // The bench is set up once.
        var setUp = plan.Timing.SetUp;
        Estimate Labour(Estimate time) => Scaled(Plus(Scaled(Less(time, setUp), vessels), setUp), 1 / MinutesPerHour);
        yield return new("labour", "h", prices.LabourPerHour, Labour(plan.Timing.Hand), Labour(Less(plan.Timing.Laser, laser)));
    }

    private static IEnumerable<Need> Bought(Plan plan, PricesShop prices)
    {
        var (design, vessels) = (plan.Assembly.Design, plan.Assembly.Design.Quantity);
        foreach (var same in design.Ports.Where(port => port.Fitting is not null).GroupBy(port => port.Fitting!.Name)
            .OrderBy(group => group.Key, StringComparer.Ordinal))
            yield return Each($"fitting {same.Key}", prices.FittingOf(same.Key), vessels * same.Count());
        var packing = vessels * plan.Assembly.Bought.Where(item => item.Volume is not null).Sum(item => item.Mass ?? 0);
        if (packing > 0)
            yield return new(
                "packing", "kg", prices.PackingPerKilogram, Exactly(packing / GramsPerKilogram), Exactly(packing / GramsPerKilogram));
        foreach (var spun in plan.Assembly.Parts.Where(part => part.Forming == Forming.Spun))
            yield return Each(Text($"spinning of {spun.Name}, blank {spun.Stock.Width:0} mm"), prices.SpinningOf(spun.Stock.Width),
                vessels * spun.Quantity);
        if (BoughtFinish.Of(design.Finish) is { } finish)
            yield return Each(finish, prices.Finish, vessels);
    }

    private static Need Each(string what, double? price, int count) => new(what, "each", price, Exactly(count), Exactly(count));

    /// <summary>Mass of each metal and thickness that is charged, grams.</summary>
    private static IEnumerable<((Material Material, double Thickness) Metal, double Mass)> Sheets(
        Plan plan, SheetCharge by) => by == SheetCharge.Blank
        ? plan.Assembly.Parts.Where(part => part.Stock.Form == "sheet").GroupBy(part => (part.Material, part.Thickness))
            .OrderBy(group => group.Key.Material.Name, StringComparer.Ordinal).ThenBy(group => group.Key.Thickness)
            .Select(group => (group.Key, plan.Assembly.Design.Quantity * group.Sum(part => part.Quantity * part.Stock.Mass)))
        : plan.Sheets.Select(sheet => ((sheet.Nest.Material, sheet.Nest.Thickness), by switch
        {
            SheetCharge.Rectangle => sheet.Rectangle is { } one ? Cut(one, plan.Assembly.Design.Shop.Stock) : sheet.Nest.Mass,
            SheetCharge.Used => sheet.Nest.Mass,
            _ => sheet.Nest.WholeMass,
        }));

    /// <summary>Mass of a rectangle as a dealer cuts it off, grams.</summary>
    private static double Cut(Nest rectangle, StockShop shop)
    {
        var (length, width) = (rectangle.Sheet.Length, rectangle.Sheet.Width);
        return rectangle.Mass * shop.Bought(length, shop.SheetLength) * shop.Bought(width, shop.SheetWidth) / (length * width);
    }

    private static string Charged(SheetCharge by) => by switch
    {
        SheetCharge.Blank => "by blanks",
        SheetCharge.Rectangle => "by the smallest rectangle",
        SheetCharge.Used => "as far as sheets are used",
        _ => "whole sheets",
    };

    private static double Purging(Plan plan) =>
        plan.Procedures.Count(weld => weld is { Purged: true, Role: WeldRole.HeadSeam }) * plan.Purge.Gas;

    private static Estimate Gas(IEnumerable<WeldProcedure> welds, double purge)
    {
        var cup = welds.Sum(weld => weld.Settings.Gas * weld.Passes * weld.Weld.Length / weld.Travel.Value);
        double Of(double flow) => ((cup * (1 + flow)) + purge) / LitresPerCubicMetre;
        return new(Of(LeastFlow), Of((LeastFlow + MostFlow) / 2), Of(MostFlow),
            "while the arc burns, a quarter to a half more before and after it, and purging");
    }

    private static Estimate Exactly(double value) => new(value, value, value, "worked out");

    private static Estimate Scaled(Estimate e, double factor) => new(factor * e.Low, factor * e.Likely, factor * e.High, e.Basis);

    /// <summary>The bought minutes are in a sum of their own and out of the shop's.</summary>
    private static Estimate Less(Estimate all, Estimate part) =>
        new(all.Low - part.Low, all.Likely - part.Likely, all.High - part.High, all.Basis);

    private static Estimate Plus(Estimate a, Estimate b) => new(a.Low + b.Low, a.Likely + b.Likely, a.High + b.High, a.Basis);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed record Need(string What, string Unit, double? Price, Estimate? Hand, Estimate? Laser)
    {
        public QuoteLine Line() => new(
            What, (Hand ?? Laser)!.Value.Likely, Unit, Price!.Value, Amount(Hand), Amount(Laser));

        /// <summary>Least that is charged, in the shop's currency.</summary>
        public double Least { get; init; }

        private Estimate? Amount(Estimate? quantity) => quantity is { } q && Scaled(q, Price!.Value) is var e
            ? e with { Low = Math.Max(Least, e.Low), Likely = Math.Max(Least, e.Likely), High = Math.Max(Least, e.High) }
            : null;
    }
}
