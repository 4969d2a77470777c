using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export.Dxf;

/// <summary>A nest as the cutter gets it: the sheets side by side upward, their borders as notes, the pieces in place with their bend lines, names and marks.</summary>
internal static class NestDxf
{
    /// <summary>Between sheets, as a share of their width.</summary>
    private const double Apart = 0.1;

    public static void Write(Nest nest, IReadOnlyDictionary<string, FittedFlat> flats, DrawingOptions options, Stream to)
    {
        var cut = nest.Places.Aggregate(DxfDrawing.Of([]), (all, place) => all.Then(Piece(nest, place, flats)));
        if (options.CutOnly)
        {
            DxfDocument.Write(cut, options.Release, to);
            return;
        }

        DxfEntity[] scribed = [.. nest.Places.SelectMany(place => FlatDxf.Scribed(flats[nest.Pieces[place.Piece].Part!.Id]).Select(entity => Moved(entity, On(nest, place))))];
        DxfEntity[] names = [.. nest.Places.Select(place => Named(nest.Pieces[place.Piece], On(nest, place))).OfType<DxfEntity>()];
        DxfEntity[] borders = [.. nest.UsedLength.SelectMany((used, sheet) => Border(nest, sheet, used))];
        DxfDocument.Write(cut.Then(DxfDrawing.Of(scribed)).Then(DxfDrawing.Of([.. names, .. borders])), options.Release, to);
    }

    /// <summary>The part's name as a note, where no mark on it says it.</summary>
    private static DxfText? Named(NestPiece piece, Func<Point2, Point2> placed)
    {
        if (piece.Part!.Flat!.Marks.OfType<TextMark>().Any(mark => mark.Text.Contains(piece.Name, StringComparison.Ordinal)))
            return null;
        var box = piece.Outline.Select(placed).Aggregate(Box2.Empty, (all, at) => all.Join(at));
        var height = Math.Clamp(Math.Min(box.Width, box.Height) / 12, 2.5, 6);
        return new(DxfLayer.Note, 0.5 * (box.Min + box.Max) - new Point2(TextMark.Width(piece.Name, height) / 2, height / 2), height, piece.Name);
    }

    private static DxfDrawing Piece(Nest nest, NestPlace place, IReadOnlyDictionary<string, FittedFlat> flats)
    {
        var fitted = flats[nest.Pieces[place.Piece].Part!.Id];
        var placed = On(nest, place);
        DxfEntity[] loops = [.. fitted.Holes.Append(fitted.Outer).Select(outline => Moved(FlatDxf.Outline(outline, DxfLayer.Cut), placed))];
        return fitted.Flat.Cut.Fields.Reverse().Aggregate(
            DxfDrawing.Of(loops),
            (rest, field) => Field(field, placed).Then(rest));
    }

    /// <summary>From a piece's own flat to its place on the sheets.</summary>
    private static Func<Point2, Point2> On(Nest nest, NestPlace place)
    {
        var up = Up(nest, place.Sheet);
        return p => place.Of(p) + up;
    }

    private static DxfDrawing Field(Lattice2 field, Func<Point2, Point2> placed)
    {
        var reach = new Point2(field.HoleRadius, field.HoleRadius);
        return new(
            field.Centers().Select(center => new DxfCircle(DxfLayer.Cut, placed(center), field.HoleRadius)),
            field.Count,
            field.Centers().Select(placed).Aggregate(Box2.Empty, (box, center) => box.Join(center - reach).Join(center + reach)));
    }

    /// <summary>A turn and a shift leave bulges as they are.</summary>
    private static DxfEntity Moved(DxfEntity entity, Func<Point2, Point2> placed) => entity switch
    {
        DxfCircle circle => circle with { Center = placed(circle.Center) },
        DxfLine line => line with { A = placed(line.A), B = placed(line.B) },
        DxfPolyline line => line with { Vertices = [.. line.Vertices.Select(vertex => vertex with { At = placed(vertex.At) })] },
        _ => throw new ArgumentException($"not of a flat: {entity}"),
    };

    private static IEnumerable<DxfEntity> Border(Nest nest, int sheet, double used)
    {
        var (up, length, width) = (Up(nest, sheet), nest.Sheet.Length, nest.Sheet.Width);
        Point2[] corners = [new(0, 0), new(length, 0), new(length, width), new(0, width)];
        for (var i = 0; i < corners.Length; i++)
            yield return new DxfLine(DxfLayer.Note, corners[i] + up, corners[(i + 1) % corners.Length] + up);
        yield return new DxfText(
            DxfLayer.Note, new Point2(0, width + 5) + up, Math.Clamp(width / 60, 3, 12),
            FormattableString.Invariant($"{nest.Material.Name} {nest.Thickness:0.##} mm, sheet {sheet + 1}, used to {used:0} mm; grain along x"));
    }

    private static Point2 Up(Nest nest, int sheet) => new(0, sheet * (1 + Apart) * nest.Sheet.Width);
}
