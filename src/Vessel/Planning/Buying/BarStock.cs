using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>Tube or bar of one section, bought in stock lengths.</summary>
/// <param name="Form">tube or bar.</param>
/// <param name="Diameter">Outside, mm.</param>
/// <param name="Wall">mm; zero for bar.</param>
/// <param name="Pieces">Name and length of each piece, mm.</param>
/// <param name="StockLength">mm.</param>
/// <param name="Used">Length from the bars' ends to the last cuts, kerfs included, mm.</param>
/// <param name="Bought">What a dealer who cuts to length sells for it, mm.</param>
/// <param name="Mass">Mass of what is bought so, grams.</param>
public sealed record BarStock(
    string Form,
    Material Material,
    double Diameter,
    double Wall,
    ImmutableArray<(string Name, double Length)> Pieces,
    double StockLength,
    BarPacking Packing,
    double Used,
    double Bought,
    double Mass)
{
    /// <summary>Share of the used length that the pieces take up.</summary>
    public double Utilisation => Used > 0 ? Packed / Used : 0;

    /// <summary>Share of the whole lengths that the pieces take up.</summary>
    public double WholeUtilisation => Packing.Bars.IsEmpty ? 0 : Packed / (Packing.Bars.Length * StockLength);

    /// <summary>Mass of the lengths that are touched, whole, grams.</summary>
    public double WholeMass => Bought > 0 ? Mass / Bought * Packing.Bars.Length * StockLength : 0;

    private double Packed => Packing.Bars.Sum(bar => bar.Sum(i => Pieces[i].Length));

    /// <param name="vessels">How many are made at once.</param>
    public static ImmutableArray<BarStock> Of(ImmutableArray<Part> parts, StockShop shop, int vessels) =>
    [
        .. parts.Where(part => part.Stock.Form != "sheet")
            .GroupBy(part => (part.Stock.Form, part.Material, Width: BoughtWidth(part.Stock), part.Stock.Wall))
            .OrderBy(group => group.Key.Form, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Material.Name, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Width)
            .ThenBy(group => group.Key.Wall)
            .Select(group => Of(group.Key.Form, group.Key.Material, group.Key.Width, group.Key.Wall, [.. group], shop, vessels)),
    ];

    /// <summary>Bar is turned down to size; tube is bought as it is drawn.</summary>
    private static double BoughtWidth(StockPiece piece) => piece.Form == "bar" ? BarSizes.Bought(piece.Width) : piece.Width;

    private static BarStock Of(
        string form, Material material, double diameter, double wall, ImmutableArray<Part> parts, StockShop shop, int vessels)
    {
        ImmutableArray<(string Name, double Length)> pieces =
        [
            .. parts.SelectMany(part => Enumerable.Repeat((part.Name, part.Stock.Length), vessels * part.Quantity))
                .OrderBy(piece => piece.Name, StringComparer.Ordinal),
        ];
        var length = form == "tube" ? shop.TubeLength : shop.BarLength;
        var packing = BarPacking.Of([.. pieces.Select(piece => piece.Length)], length - shop.GripLoss, shop.SawKerf);
        ImmutableArray<double> used = [.. packing.Bars.Select(bar => bar.Sum(i => pieces[i].Length + shop.SawKerf))];
        var bought = used.Sum(one => shop.Bought(one, length, shop.LeastCut));
        var inner = wall > 0 ? (diameter / 2) - wall : 0;
        var section = Math.PI * ((diameter * diameter / 4) - (inner * inner));
        return new(form, material, diameter, wall, pieces, length, packing, used.Sum(), bought, section * bought * material.Density / 1000);
    }
}
