using System.Collections.Immutable;
using Vessel.Parts;

namespace Vessel.Export;

/// <summary>cut-list.csv: every piece of stock, then what is bought finished.</summary>
internal static class CutListCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "part", "quantity", "form", "material", "length_mm", "width_or_diameter_mm", "wall_mm", "stock_mass_g",
        "finished_mass_g", "remark",
    ];

    public static void Write(Assembly assembly, Stream to) => Csv.Write(
        to,
        _columns,
        [
            .. assembly.Parts.Select(Piece),
            .. BoughtItems.Of(assembly.Design, assembly.Sites).Select(Bought),
        ]);

    private static CsvCell[] Piece(Part part) =>
    [
        part.Name, part.Quantity, part.Stock.Form, part.Material.Name, part.Stock.Length, part.Stock.Width, part.Stock.Wall,
        part.Stock.Mass, part.Mass,
        part.Kind switch
        {
            PartKind.Cone => "sector, to be rolled to a cone",
            PartKind.Head => "blank for spinning, starting size",
            PartKind.Gore => "starting size, to be bent and dished",
            PartKind.Crown => "blank for dishing, starting size",
            PartKind.Bung => $"thread {part.Holes[0].Thread!.Thread}; or a bung bought to this size",
            _ => null,
        },
    ];

    private static CsvCell[] Bought(BoughtItem item) =>
        [item.Name, item.Quantity, "bought", default, default, default, default, default, item.Mass, item.What];
}
