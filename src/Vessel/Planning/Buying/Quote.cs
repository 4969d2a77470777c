using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>One line of a quote; only what the shop has a price for.</summary>
/// <param name="Quantity">Likely, by hand; by laser where the line is the laser's.</param>
/// <param name="Price">Of one unit, in the shop's currency.</param>
/// <param name="Hand">Amount with parts cut by hand; null where that way does not need it.</param>
/// <param name="Laser">Amount with parts cut by laser; null where that way does not need it.</param>
public sealed record QuoteLine(string What, double Quantity, string Unit, double Price, Estimate? Hand, Estimate? Laser);

/// <summary>What the vessel costs at the shop's own prices, by hand and by laser side by side.</summary>
/// <param name="NotPriced">What has no price and is in no total.</param>
public sealed record Quote(string Currency, ImmutableArray<QuoteLine> Lines, Estimate Hand, Estimate Laser, ImmutableArray<string> NotPriced)
{
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
            [.. all.Where(need => need.Price is null).Select(need => need.What)]);
    }

    private static IEnumerable<Need> Needs(Plan plan, PricesShop prices)
    {
        foreach (var (metal, mass) in Sheets(plan, prices.SheetBy))
        {
            yield return new(
                Text($"{metal.Material.Name} sheet {metal.Thickness:0.##} mm, {Charged(prices.SheetBy)}"), "kg",
                prices.Metal(metal.Material.Family), Exactly(mass / GramsPerKilogram), Exactly(mass / GramsPerKilogram));
        }

        foreach (var bar in plan.Bars)
        {
            var mass = Exactly((prices.WholeLengths ? bar.WholeMass : bar.Mass) / GramsPerKilogram);
            var size = bar.Wall > 0 ? Text($"{bar.Diameter:0.##} x {bar.Wall:0.##}") : Text($"{bar.Diameter:0.##}");
            yield return new(
                $"{bar.Material.Name} {bar.Form} {size} mm{(prices.WholeLengths ? ", whole lengths" : "")}", "kg", prices.Metal(bar.Material.Family), mass, mass);
        }

        var laser = Timing.Sum(plan.Timing.Items.Where(item => item.Operation == "laser").Select(item => item.Laser));
        yield return new("laser cutting", "min", prices.LaserPerMinute, null, laser);
        foreach (var rods in plan.Procedures.GroupBy(weld => weld.Filler).OrderBy(group => group.Key.Name, StringComparer.Ordinal))
        {
            var mass = Scaled(Timing.Sum(rods.Select(weld => (Estimate?)weld.FillerMass)), 1 / GramsPerKilogram);
            yield return new($"{rods.Key.Name} rod", "kg", prices.RodPerKilogram, mass, mass);
        }

        var gas = Gas(plan.Procedures.Where(weld => !weld.Settings.HasHelium), Purging(plan));
        yield return new("argon", "m3", prices.GasPerCubicMetre, gas, gas);
        // It costs several times what argon does, and no shop file has its price.
        if (plan.Procedures.Any(weld => weld.Settings.HasHelium))
            yield return new("argon/helium", "m3", null, null, null);
        var fittings = plan.Assembly.Design.Ports.Count(port => port.Fitting is not null);
        if (fittings > 0)
            yield return new("fittings", "each", prices.Fitting, Exactly(fittings), Exactly(fittings));
        var packing = BoughtItems.Of(plan.Assembly.Design, plan.Assembly.Sites).Where(item => item.Volume is not null).Sum(item => item.Mass ?? 0);
        if (packing > 0)
            yield return new("packing", "kg", prices.PackingPerKilogram, Exactly(packing / GramsPerKilogram), Exactly(packing / GramsPerKilogram));
        var spun = plan.Assembly.Parts.Where(part => part.Kind == PartKind.Head).Sum(part => part.Quantity);
        if (spun > 0)
            yield return new("spinning", "each", prices.Spinning, Exactly(spun), Exactly(spun));
        if (BoughtFinish.Of(plan.Assembly.Design.Finish) is { } finish)
            yield return new(finish, "each", prices.Finish, Exactly(1), Exactly(1));
        yield return new(
            "labour", "h", prices.LabourPerHour, Scaled(plan.Timing.Hand, 1 / MinutesPerHour),
            Scaled(Less(plan.Timing.Laser, laser), 1 / MinutesPerHour));
    }

    /// <summary>Of each metal and thickness what is charged, grams.</summary>
    private static IEnumerable<((Material Material, double Thickness) Metal, double Mass)> Sheets(Plan plan, SheetCharge by) => by == SheetCharge.Blank
        ? plan.Assembly.Parts.Where(part => part.Stock.Form == "sheet").GroupBy(part => (part.Material, part.Thickness))
            .OrderBy(group => group.Key.Material.Name, StringComparer.Ordinal).ThenBy(group => group.Key.Thickness)
            .Select(group => (group.Key, group.Sum(part => part.Quantity * part.Stock.Mass)))
        : plan.Sheets.Select(sheet => ((sheet.Nest.Material, sheet.Nest.Thickness), by switch
        {
            SheetCharge.Rectangle => (sheet.Rectangle ?? sheet.Nest).Mass,
            SheetCharge.Used => sheet.Nest.Mass,
            _ => sheet.Nest.WholeMass,
        }));

    private static string Charged(SheetCharge by) => by switch
    {
        SheetCharge.Blank => "by blanks",
        SheetCharge.Rectangle => "by the smallest rectangle",
        SheetCharge.Used => "as far as sheets are used",
        _ => "whole sheets",
    };

    private static double Purging(Plan plan) => plan.Procedures.Count(weld => weld is { Purged: true, Role: WeldRole.HeadSeam }) * plan.Purge.Gas;

    private static Estimate Gas(IEnumerable<WeldProcedure> welds, double purge)
    {
        var cup = welds.Sum(weld => weld.Settings.Gas * weld.Passes * weld.Weld.Length / weld.Travel.Value);
        double Of(double flow) => ((cup * (1 + flow)) + purge) / LitresPerCubicMetre;
        return new(Of(LeastFlow), Of((LeastFlow + MostFlow) / 2), Of(MostFlow), "while the arc burns, a quarter to a half more before and after it, and purging");
    }

    private static Estimate Exactly(double value) => new(value, value, value, "worked out");

    private static Estimate Scaled(Estimate e, double factor) => new(factor * e.Low, factor * e.Likely, factor * e.High, e.Basis);

    /// <summary>The bought minutes are in a sum of their own and out of the shop's.</summary>
    private static Estimate Less(Estimate all, Estimate part) => new(all.Low - part.Low, all.Likely - part.Likely, all.High - part.High, all.Basis);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed record Need(string What, string Unit, double? Price, Estimate? Hand, Estimate? Laser)
    {
        public QuoteLine Line() => new(
            What, (Hand ?? Laser)!.Value.Likely, Unit, Price!.Value, Amount(Hand), Amount(Laser));

        private Estimate? Amount(Estimate? quantity) => quantity is { } q ? Scaled(q, Price!.Value) : null;
    }
}
