using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Pdf;
using Vessel.Function;
using Vessel.Planning;
using Vessel.Stock;

namespace Vessel.Export.Paper;

/// <summary>as-built.pdf: measured positions, welds, leak test and masses as planned, with columns to fill in by pencil.</summary>
internal static class AsBuiltPdf
{
    private const double Letter = 2.3;

    /// <summary>Room for handwriting: rows of 7 mm.</summary>
    private const double Spread = 3;

    private const double Gap = 6;

    /// <summary>A blank column is so many letters wide.</summary>
    private const int Blank = 12;

    public static ImmutableArray<Page> Pages(Build build)
    {
        var frame = new PageFrame(build.Options.Paper.Size.Lying);
        var filled = new TablePages(frame.Area, Gap);
        foreach (var (heading, table) in Tables(build))
            filled.Add(table, heading);
        return
        [
            .. filled.Pages.Select((items, i) => frame.Page(
                frame.Title(
                    "As built",
                    $"page {i + 1} of {filled.Pages.Count}",
                    $"{TemplatesPdf.VesselName(build.Assembly.Design)}; serial no. ____________   made by ____________   date ____________ "
                        + "  checked by ____________"),
                items)),
        ];
    }

    private static IEnumerable<(string Heading, PaperTable Table)> Tables(Build build)
    {
        var (plan, units) = (build.Plan, new TwoUnits(build.Assembly.Design.Units));
        var unit = units.Names.First;
        string Told(double? mm) => mm is { } length ? units.Of(length).First : string.Empty;
        string Turn(double? degrees) => degrees is { } value ? value.ToString("0.0", CultureInfo.InvariantCulture) : string.Empty;
        yield return ($"Measured positions, {unit} and deg; the clock runs counter-clockwise from the front, seen from above", Table(
            ["what", "welds", "from", "height", "clock", "round outside", "from axis", "depth"],
            ["height is", "clock is", "from axis is", "depth is", "by"],
            SetUpTable.Of(build.Assembly).Select(row => (ImmutableArray<string>)
            [
                row.What, Runs(row.Welds), row.Datum, Told(row.Height), Turn(row.Clock), Told(row.Arc), Told(row.FromAxis), Told(row.Depth),
            ])));
        yield return ($"Welds, {unit}; numbered as on parts, drawing and flats", Table(
            ["weld", "joint", "length", "size", "filler", "amps"],
            ["size is", "amps were", "rod lot", "by, on", "looked at", "tight"],
            build.Welds.Zip(plan.Procedures).Select(pair => (ImmutableArray<string>)
            [
                pair.Second.Joint.Number, pair.Second.Joint.Name, Told(pair.First.Figures.Length), Size(pair.Second, units),
                pair.Second.Filler.Name,
                FormattableString.Invariant($"{pair.Second.Settings.Low:0}-{pair.Second.Settings.High:0} {pair.Second.Current.Short()}"),
            ])));
        yield return ($"Leak test with {LeakWords.Named(plan.LeakKit.Test)}: shut, then look for {LeakWords.Sign(plan.LeakKit.Test)}",
            Table(
            ["task", "place", "detail"],
            ["tight", "repaired", "tight again"],
            plan.LeakKit.Blanks.Select(blank => (ImmutableArray<string>)["shut", blank.Port, blank.Blank])
                .Concat(plan.LeakKit.Points.Select(point => (ImmutableArray<string>)["look", point.Where, point.What]))));
        var mass = Weight.Empty(build.Assembly).Mass / 1000;
        yield return ("Material and whole", Table(
            ["item", "planned"],
            ["is", "certificate or lot", "by"],
            [
                .. build.Assembly.Parts.Select(part => (part.Material.Name, Stock: StockWords.Section(part, mm => Told(mm)))).Distinct()
                    .Order()
                    .Select(stock => (ImmutableArray<string>)[$"{stock.Stock} {unit}", stock.Name]),
                ["mass, empty", FormattableString.Invariant($"{mass:0.00} kg")],
                ["leak test, and how long held", LeakWords.Named(plan.LeakKit.Test)],
                ["finish",
                    build.Assembly.Design.Finish == Finish.None ? "none" : build.Assembly.Design.Finish.ToString().ToLowerInvariant()],
            ]));
    }

    private static PaperTable Table(
        ImmutableArray<string> told, ImmutableArray<string> blanks, IEnumerable<ImmutableArray<string>> rows) => new(
        [.. told, .. blanks.Select(name => name.PadRight(Blank))],
        [.. rows.Select(row => row.AddRange(blanks.Select(_ => string.Empty)))],
        Letter)
        {
            Spread = Spread,
            IsBoxed = true,
        };

    private static string Size(WeldProcedure weld, TwoUnits units) => weld.Weld.Leg.End > 0
        ? $"throat {units.Of(weld.Joint.Throat).First}"
        : $"wall {units.Of(weld.Joint.Wall).First}";

    /// <summary>First and last of many, as on the drawing.</summary>
    private static string Runs(ImmutableArray<string> numbers) =>
        numbers.Length > 2 ? $"{numbers[0]}-{numbers[^1]}" : string.Join(" ", numbers);
}
