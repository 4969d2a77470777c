using System.Globalization;
using Vessel.Cli.Commands;
using Vessel.Export;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Stock;

namespace Vessel.Cli;

/// <summary>The account that <c>build</c> prints: parts, welds, capacity, findings, and where the files are.</summary>
internal static class BuildText
{
    public static void Write(DesignFile file, Build build, string folder, CommitResult written, CommandConsole console)
    {
        var (output, style) = (console.Output, console.Style);
        var design = build.Assembly.Design;
        output.WriteLine(style.Bold($"{design.Name}, revision {design.Revision}"));
        output.WriteLine();
        WriteTable(console,
            ["part", "material", "stock", "mass"],
            [.. build.Parts.Select(built => new[]
            {
                built.Part.Name,
                built.Part.Material.Name,
                Stock(built.Part.Stock),
                Grams(built.Part.Mass * built.Part.Quantity),
            })]);
        output.WriteLine();
        WriteTable(console,
            ["weld", "joint", "kind", "length", "legs", "filler", "rods", "arc"],
            [.. build.Welds.Select(weld => Row(weld.Figures, weld.Cost))]);
        var totals = WeldTotals.Of(build.Welds, design.Shop.Welding);
        var job = totals.JobMinutes;
        output.WriteLine();
        output.WriteLine(Invariant(
            $"welding   {totals.Length / 1000:0.00} m, {totals.FillerMass.Likely:0} to {totals.FillerMass.High:0} g of filler, {job.Low:0} to {job.High:0} min at the bench (likely {job.Likely:0})"));
        foreach (var sheet in build.Plan.Sheets)
            output.WriteLine($"sheet     {Sheet(sheet)}");
        foreach (var bar in build.Plan.Bars)
        {
            output.WriteLine(Invariant(
                $"{bar.Form,-8}  {StockWords.Name(bar)}: {bar.Packing.Bars.Length} of {bar.StockLength:0} mm, {bar.Used:0} mm used, {100 * bar.WholeUtilisation:0.0} % of it filled"));
        }

        var (hand, laser) = (build.Plan.Timing.Hand, build.Plan.Timing.Laser);
        output.WriteLine(Invariant(
            $"time      {hand.Low / 60:0.0} to {hand.High / 60:0.0} h by hand, likely {hand.Likely / 60:0.0}; with parts cut by laser {laser.Low / 60:0.0} to {laser.High / 60:0.0} h, likely {laser.Likely / 60:0.0}"));
        if (Quote.Of(build.Plan) is { } quote)
        {
            var paid = quote.PaidOverCost;
            output.WriteLine(Invariant(
                $"quote     {paid * quote.Hand.Low:0} to {paid * quote.Hand.High:0} {quote.Currency} by hand, likely {paid * quote.Hand.Likely:0}; by laser likely {paid * quote.Laser.Likely:0}{(quote.Vessels > 1 ? $", for {quote.Vessels} vessels" : "")}{(paid > 1 ? ", with margin and tax" : "")}{(quote.NotPriced.IsEmpty ? "" : $"; without {string.Join(", ", quote.NotPriced)}")}"));
        }

        FunctionText.Write(build.Function, build.Assembly.Capacity, output);
        output.WriteLine(Invariant($"mass      {Weight.Empty(build.Assembly).Mass / 1000:0.00} kg, empty"));
        output.WriteLine();
        if (!build.Findings.IsEmpty)
        {
            FindingText.Write(file, build.Findings, output, style);
            output.WriteLine();
        }

        output.WriteLine($"{written.Written.Length} files in {folder}: open report.html first");
        output.WriteLine("A vented vessel, not rated for pressure; cautions and assumptions are in report.html.");
    }

    private static string[] Row(WeldFigures figures, WeldCost cost) =>
    [
        figures.Joint.Number,
        figures.Joint.Name,
        figures.Joint.Kind.ToString().ToLowerInvariant(),
        Invariant($"{figures.Length:0.0} mm"),
        Legs(figures.Leg.Start, figures.Leg.End),
        cost.Filler.Name,
        Invariant($"{cost.Rods.Likely:0.00} of {cost.Rod.Diameter:0.0} mm"),
        Invariant($"{cost.ArcMinutes:0.0} min"),
    ];

    private static string Legs(double least, double greatest)
    {
        var (low, high) = (Invariant($"{least:0.0}"), Invariant($"{greatest:0.0}"));
        return greatest == 0 ? "-" : low == high ? $"{low} mm" : $"{low} to {high} mm";
    }

    private static string Stock(StockPiece piece) => piece.Form switch
    {
        "sheet" => Invariant($"sheet {piece.Wall:0.##} mm, {piece.Length:0.0} x {piece.Width:0.0} mm"),
        "tube" => Invariant($"tube {piece.Width:0.##} x {piece.Wall:0.##} mm, {piece.Length:0.0} mm"),
        _ => Invariant($"bar {piece.Width:0.##} mm, {piece.Length:0.0} mm"),
    };

    private static string Sheet(SheetStock stock)
    {
        var nest = stock.Nest;
        var rectangle = stock.Rectangle is { } r
            ? Invariant($"; or a remnant of {r.Sheet.Length:0} x {r.Sheet.Width:0} mm, {100 * r.Utilisation:0.0} % filled")
            : "";
        return Invariant(
            $"{StockWords.Name(nest)}: {nest.UsedLength.Length} of {nest.Sheet.Length:0} x {nest.Sheet.Width:0} mm, {StockWords.Used(nest)}, {100 * nest.Utilisation:0.0} % of that filled{rectangle}");
    }

    private static string Grams(double grams) => Invariant($"{grams:0} g");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static void WriteTable(CommandConsole console, string[] head, string[][] rows) =>
        TextTable.Write(console.Output, [head, .. rows], console.Width);
}
