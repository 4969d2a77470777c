using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Dxf;

/// <summary>The drawing that the cutter gets: millimetres, outside face up.</summary>
public static class FlatDxf
{
    public static void Write(FittedFlat fitted, DrawingOptions options, Stream to)
    {
        var (flat, cut) = (fitted.Flat, Cut(fitted));
        if (options.CutOnly)
        {
            DxfDocument.Write(cut, options.Release, to);
            return;
        }

        DxfEntity[] scribed = [.. flat.Bends.Select(bend => new DxfLine(DxfLayer.Bend, bend.A, bend.B)), .. flat.Marks.SelectMany(Drawn)];
        var drawn = cut.Then(DxfDrawing.Of(scribed));
        DxfDocument.Write(drawn.Then(DxfDrawing.Of([.. Notes(flat.Notes, drawn.Bounds)])), options.Release, to);
    }

    /// <summary>Closed outlines, the holes first: once the outer loop is cut the part may move.</summary>
    private static DxfDrawing Cut(FittedFlat fitted)
    {
        DxfEntity[] loops = [.. fitted.Holes.Append(fitted.Outer).Select(outline => Outline(outline, DxfLayer.Cut))];
        return fitted.Flat.Cut.Fields.Reverse().Aggregate(
            DxfDrawing.Of(loops),
            (rest, field) => DxfDrawing.Of(field, 1, center => [new DxfCircle(DxfLayer.Cut, center, field.HoleRadius)]).Then(rest));
    }

    internal static DxfEntity Outline(FittedOutline outline, string layer) => outline.Fit is { } fit
        ? new DxfPolyline(layer, fit.Vertices, Closed: true)
        : new DxfCircle(layer, outline.Exact.AsCircle!.Center, outline.Exact.AsCircle.Radius);

    internal static IEnumerable<DxfEntity> Letters(TextMark text) => Strokes.Of(text.Text, text.Center, text.Height, text.Angle)
        .Select(stroke => new DxfPolyline(DxfLayer.Mark, [.. stroke.Select(p => new Bulge(p, 0))], Closed: false));

    /// <summary>Lines of text below what is drawn, as high as suits its size.</summary>
    internal static IEnumerable<DxfEntity> Notes(ImmutableArray<string> notes, Box2 above)
    {
        var height = Math.Clamp(Math.Max(above.Width, above.Height) / 40, 2.5, 5);
        return notes.Select((line, i) =>
            new DxfText(DxfLayer.Note, above.Min - new Point2(0, height * (2.5 + (1.6 * i))), height, line));
    }

    private static IEnumerable<DxfEntity> Drawn(Mark mark) => mark switch
    {
        LineMark line => [new DxfLine(DxfLayer.Mark, line.A, line.B)],
        TextMark text => Letters(text),
        _ => throw new ArgumentException($"no such mark: {mark}"),
    };
}
