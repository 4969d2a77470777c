using Vessel.Function;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export.Report.Sections;

/// <summary>What is taken off the rack, and what is bought.</summary>
internal static class CutListSection
{
    public static ReportSection Section { get; } = new("cut-list", "Cut list", Write);

    private static void Write(ReportContext report, Html html)
    {
        var (sizes, unit) = (report.Sizes, report.Sizes.Unit);
        var parts = report.Build.Parts.Select(built => built.Part).ToList();
        html.Table(
            "stock",
            "Stock, one row a part",
            [
                "Part", Column.Figure("Pieces"), "Material", "Form", Column.Figure($"Length, {unit}"),
                Column.Figure($"Width or diameter, {unit}"), Column.Figure($"Wall, {unit}"), Column.Figure("Stock, g each"),
                Column.Figure("Finished, g each"),
            ],
            [
                .. parts.Select(part => new Cell[]
                {
                    Cell.Link($"#part-{part.Id}", part.Name),
                    Sizes.Count(part.Quantity),
                    part.Material.Name,
                    part.SawNote is { } note ? $"{part.Stock.Form}; {note}" : part.Stock.Form,
                    sizes.Length(StockWords.ToBuy(part, part.Stock.Length)),
                    sizes.Length(StockWords.ToBuy(part, part.Stock.Width)),
                    part.Stock.Wall > 0 ? sizes.Fine(part.Stock.Wall) : null,
                    Sizes.Text(part.Stock.Mass, 0),
                    Sizes.Text(part.Mass, 0),
                }),
                [
                    "All pieces", Sizes.Count(parts.Sum(part => part.Quantity)), null, null, null, null, null,
                    Sizes.Text(parts.Sum(part => part.Stock.Mass * part.Quantity), 0),
                    Sizes.Text(parts.Sum(part => part.Mass * part.Quantity), 0),
                ],
            ],
            hasTotal: true);
        WriteToBuy(report, html);
        var bought = report.Build.Assembly.Bought.ToList();
        if (bought.Count == 0)
            return;
        html.Table(
            "bought",
            "Bought finished",
            ["For", Column.Figure("Pieces"), "Order text", Column.Figure("Mass, g")],
            [
                .. bought.Select(item => new Cell[]
                {
                    item.Name, Sizes.Count(item.Quantity), item.What, item.Mass is { } mass ? Sizes.Text(mass, 1) : null,
                }),
            ]);
    }

    private static void WriteToBuy(ReportContext report, Html html)
    {
        var (sizes, unit, plan) = (report.Sizes, report.Sizes.Unit, report.Build.Plan);
        html.Table(
            "to-buy",
            "To buy, or to look for among the remnants; the nests are in nests/",
            [
                "Stock", Column.Figure("Pieces"), Column.Figure($"Length, {unit}"), Column.Figure($"Width, {unit}"),
                Column.Figure("Filled, %"), "Remark",
            ],
            [
                .. plan.Sheets.SelectMany(stock => new[] { stock.Nest, stock.Rectangle }.OfType<Nest>().Select((nest, i) => new Cell[]
                {
                    i == 0 ? StockWords.Name(nest) : "or a remnant",
                    Sizes.Count(nest.UsedLength.Length),
                    sizes.Length(nest.Sheet.Length),
                    sizes.Length(nest.Sheet.Width),
                    Sizes.Text(100 * nest.Utilisation, 1),
                    i == 0 ? StockWords.Used(nest) : "the smallest rectangle found for all pieces",
                })),
                .. plan.Bars.Select(bar => new Cell[]
                {
                    StockWords.Name(bar), Sizes.Count(bar.Packing.Bars.Length), sizes.Length(bar.StockLength), null,
                    Sizes.Text(100 * bar.WholeUtilisation, 1), StockWords.Used(bar),
                }),
            ]);
    }
}
