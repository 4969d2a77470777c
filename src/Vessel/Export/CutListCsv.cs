using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>
/// cut-list.csv: every piece with the sheet or length it comes from, what stock to buy and how full it gets, then what is bought finished.
/// </summary>
internal static class CutListCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "part", "quantity", "form", "material", "length_mm", "width_or_diameter_mm", "wall_mm", "stock_mass_g",
        "finished_mass_g", "from", "filled_percent", "remark",
    ];

    public static void Write(Plan plan, Stream to) => Csv.Write(
        to,
        _columns,
        [
            .. plan.Assembly.Parts.Select(part => Piece(part, plan)),
            .. plan.Sheets.SelectMany(sheet => Sheet(sheet, plan.Assembly.Design.Shop.Stock)),
            .. plan.Bars.Select(Bar),
            .. plan.Assembly.Bought.Select(item => Bought(item, plan.Assembly.Design.Quantity)),
        ]);

    private static CsvCell[] Piece(Part part, Plan plan) =>
    [
        part.Name, plan.Assembly.Design.Quantity * part.Quantity, part.Stock.Form, part.Material.Name,
            StockWords.ToBuy(part, part.Stock.Length), StockWords.ToBuy(part, part.Stock.Width), part.Stock.Wall,
        part.Stock.Mass, part.Mass, StockWords.From(part, plan), default,
        part.Kind == PartKind.Bung ? $"thread {part.Holes[0].Thread!.Thread}; or a bung bought to this size" : part.StockNote
            ?? part.SawNote,
    ];

    private static IEnumerable<CsvCell[]> Sheet(SheetStock stock, StockShop shop)
    {
        var nest = stock.Nest;
        yield return
        [
            StockWords.Name(nest), nest.UsedLength.Length, "sheet to buy", nest.Material.Name, nest.Sheet.Length, nest.Sheet.Width,
                nest.Thickness,
            nest.Mass, default, default, Percent(nest.Utilisation), StockWords.Used(nest),
        ];
        if (stock.Rectangle is { } rectangle)
        {
            yield return
            [
                StockWords.Name(nest), 1, "or a remnant", nest.Material.Name, shop.Bought(rectangle.Sheet.Length, shop.SheetLength),
                shop.Bought(rectangle.Sheet.Width, shop.SheetWidth), nest.Thickness,
                rectangle.Mass, default, default, Percent(rectangle.Utilisation),
                    "the smallest rectangle found, margins and spacing kept; grain along its length",
            ];
        }
    }

    private static CsvCell[] Bar(BarStock bar) =>
    [
        StockWords.Name(bar), bar.Packing.Bars.Length, $"{bar.Form} to buy", bar.Material.Name, bar.StockLength, bar.Diameter, bar.Wall,
        bar.Mass, default, default, Percent(bar.WholeUtilisation), StockWords.Used(bar),
    ];

    private static double Percent(double share) => Math.Round(100 * share, 1);

    private static CsvCell[] Bought(BoughtItem item, int vessels) =>
        [item.Name, vessels * item.Quantity, "bought", default, default, default, default, default, vessels * item.Mass, default, default,
            item.What];
}
