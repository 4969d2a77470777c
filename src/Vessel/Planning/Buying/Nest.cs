using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>The flats of one metal and thickness, laid out on sheets.</summary>
/// <param name="Places">Places of the pieces that fit, in the pieces' order.</param>
/// <param name="TooLarge">Names of those that no sheet holds.</param>
/// <param name="UsedLength">Length of each sheet to its last piece and the margin, mm; the rest is whole.</param>
public sealed record Nest(
    Material Material,
    double Thickness,
    NestSheet Sheet,
    ImmutableArray<NestPiece> Pieces,
    ImmutableArray<NestPlace> Places,
    ImmutableArray<string> TooLarge,
    ImmutableArray<double> UsedLength)
{
    /// <summary>Area of the pieces, openings not taken off, as a share of the used length over the sheet's whole width.</summary>
    public double Utilisation =>
        UsedLength.IsEmpty ? 0 : Places.Sum(place => Pieces[place.Piece].Area) / (UsedLength.Sum() * Sheet.Width);

    /// <summary>What is used of the sheets, grams.</summary>
    public double Mass => MassOf(UsedLength.Sum() * Sheet.Width);

    /// <summary>Mass of the sheets that are touched, whole, grams.</summary>
    public double WholeMass => MassOf(UsedLength.Length * Sheet.Length * Sheet.Width);

    private double MassOf(double area) => area * Thickness * Material.Density / 1000;

    public static bool IsCutFromSheet(Part part) => part.Flat is { Kind: not FlatKind.Wrap } && part.Stock.Form == "sheet";

    /// <param name="vessels">How many are made at once.</param>
    /// <param name="kerf">Width of the cut, mm.</param>
    public static ImmutableArray<Nest> Of(ImmutableArray<Part> parts, StockShop shop, int vessels, double kerf) =>
    [
        .. parts.Where(IsCutFromSheet)
            .GroupBy(part => (part.Material, part.Thickness))
            .OrderBy(group => group.Key.Material.Name, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Thickness)
            .Select(group => Of(
                group.Key.Material,
                group.Key.Thickness,
                NestSheet.Of(shop, kerf),
                [.. group.OrderBy(part => part.Id, StringComparer.Ordinal)
                    .SelectMany(part => Enumerable.Repeat(NestPiece.Of(part), vessels * part.Quantity))])),
    ];

    /// <summary>True outlines, or bounding boxes on shelves where those come out shorter.</summary>
    public static Nest Of(Material material, double thickness, NestSheet sheet, ImmutableArray<NestPiece> pieces) =>
        new[] { RasterNest.Of(pieces, sheet), ShelfNest.Of(pieces, sheet) }
            .Select(places => Laid(material, thickness, sheet, pieces, places))
            .OrderBy(nest => nest.TooLarge.Length).ThenBy(nest => nest.UsedLength.Sum())
            .First();

    internal static Nest Laid(
        Material material, double thickness, NestSheet sheet, ImmutableArray<NestPiece> pieces, ImmutableArray<NestPlace?> places)
    {
        ImmutableArray<NestPlace> laid = [.. places.OfType<NestPlace>()];
        return new(
            material,
            thickness,
            sheet,
            pieces,
            laid,
            [.. pieces.Where((_, i) => places[i] is null).Select(piece => piece.Name)],
            [
                .. laid.GroupBy(place => place.Sheet).OrderBy(group => group.Key)
                    .Select(group => group.Max(place => pieces[place.Piece].Outline.Max(p => place.Of(p).U)) + sheet.Margin),
            ]);
    }
}
