using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export.Dxf;

/// <summary>
/// A nest as the cutter gets it: the sheets side by side upward, their borders as notes, the pieces in place with their bend lines, names
/// and marks.
/// </summary>
internal static class NestDxf
{
    /// <summary>Between sheets, as a share of their width.</summary>
    private const double Apart = 0.1;

    public static void Write(Nest nest, IReadOnlyDictionary<string, FittedFlat> flats, DrawingOptions options, Stream to)
    {
        IEnumerable<Item> Placed(Func<FittedFlat, IEnumerable<Item>> drawn) => nest.Places.SelectMany(place =>
            drawn(flats[nest.Pieces[place.Piece].Part!.Id])
                .Select(item => Placing.Placed(item, On(nest, place), 1, place.QuarterTurns * Math.PI / 2)));
        var cut = Placed(flat => [.. FlatDrawing.Fields(flat), flat.Metal]);
        DxfDocument.Write(
            options.CutOnly ? [.. cut] :
            [
                .. cut,
                .. Placed(flat => FlatDrawing.Bends(flat.Flat).Concat(flat.Marks)),
                .. nest.Places.Select(place => Named(nest.Pieces[place.Piece], On(nest, place))).OfType<Item>(),
                .. nest.UsedLength.SelectMany((used, sheet) => Border(nest, sheet, used)),
            ],
            options.Release,
            to);
    }

    /// <summary>The part's name as a note, where no mark on it says it.</summary>
    private static Text? Named(NestPiece piece, Func<Point2, Point2> placed)
    {
        if (piece.Part!.Flat!.Marks.OfType<TextMark>().Any(mark => mark.Text.Contains(piece.Name, StringComparison.Ordinal)))
            return null;
        var box = piece.Outline.Select(placed).Aggregate(Box2.Empty, (all, at) => all.Join(at));
        var height = Math.Clamp(Math.Min(box.Width, box.Height) / 12, 2.5, 6);
        return Text.Left(piece.Name, 0.5 * (box.Min + box.Max) - new Point2(TextMark.Width(piece.Name, height) / 2, height / 2), height);
    }

    /// <summary>Map from a piece's own flat to its place on the sheets.</summary>
    private static Func<Point2, Point2> On(Nest nest, NestPlace place)
    {
        var up = Up(nest, place.Sheet);
        return p => place.Of(p) + up;
    }

    private static IEnumerable<Item> Border(Nest nest, int sheet, double used)
    {
        var (up, length, width) = (Up(nest, sheet), nest.Sheet.Length, nest.Sheet.Width);
        yield return Stroke.Rectangle(new(up, up + new Point2(length, width)), Pens.Note);
        yield return Text.Left(
            FormattableString.Invariant(
                $"{nest.Material.Name} {nest.Thickness:0.##} mm, sheet {sheet + 1}, used to {used:0} mm; grain along x"),
            new Point2(0, width + 5) + up,
            Math.Clamp(width / 60, 3, 12));
    }

    private static Point2 Up(Nest nest, int sheet) => new(0, sheet * (1 + Apart) * nest.Sheet.Width);
}
