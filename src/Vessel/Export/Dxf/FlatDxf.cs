using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Dxf;

/// <summary>The drawing that the cutter gets: millimetres, outside face up.</summary>
public static class FlatDxf
{
    /// <exception cref="OutputException">The kerf is wider than an edge of the part lets it be.</exception>
    public static void Write(FittedFlat fitted, DrawingOptions options, Stream to)
    {
        var (flat, cut) = (fitted.Flat, Cut(fitted, options));
        if (options.CutOnly)
        {
            DxfDocument.Write(cut, options.Release, to);
            return;
        }

        var drawn = cut.Then(DxfDrawing.Of([.. Scribed(fitted)]));
        DxfDocument.Write(drawn.Then(DxfDrawing.Of([.. Notes(flat.Notes, drawn.Bounds)])), options.Release, to);
    }

    /// <summary>Bend lines and marks.</summary>
    internal static IEnumerable<DxfEntity> Scribed(FittedFlat fitted) =>
        fitted.Flat.Bends.Select(bend => (DxfEntity)new DxfLine(DxfLayer.Bend, bend.A, bend.B)).Concat(Marks(fitted));

    /// <summary>Closed outlines, the holes first: once the outer loop is cut the part may move.</summary>
    private static DxfDrawing Cut(FittedFlat fitted, DrawingOptions options)
    {
        var off = options.Kerf / 2;
        var held = options.InFrameOf is { } thickness ? CutFrame.Of(fitted, thickness) : null;
        var loops = fitted.Holes.Select(hole => Outline(hole, -off, off))
            .Concat(held is null ? [Outline(fitted.Outer, off, off)] : held.Slots.Append(held.Frame).Select(chain => Chain(chain, off)));
        return fitted.Flat.Cut.Fields.Reverse().Aggregate(
            DxfDrawing.Of([.. loops]),
            (rest, field) => DxfDrawing.Of(field, 1, center => [new DxfCircle(DxfLayer.Cut, center, Left(field.HoleRadius - off))]).Then(rest));
    }

    /// <param name="outward">What a circle's radius grows by, mm.</param>
    /// <param name="off">What a chain moves by to its right, where the waste is, mm.</param>
    private static DxfEntity Outline(FittedOutline outline, double outward, double off)
    {
        if (off == 0)
            return Outline(outline, DxfLayer.Cut);
        if (outline.Fit is not { } fit)
            return new DxfCircle(DxfLayer.Cut, outline.Exact.AsCircle!.Center, Left(outline.Exact.AsCircle.Radius + outward));
        return Chain(fit.Vertices, off);
    }

    private static DxfPolyline Chain(ImmutableArray<Bulge> vertices, double off) =>
        new(DxfLayer.Cut, off == 0 ? vertices : KerfOffset.Right(vertices, off) ?? throw TooWide(), Closed: true);

    private static double Left(double radius) => radius > 0 ? radius : throw TooWide();

    private static OutputException TooWide() => new("the kerf is wider than the narrowest hole or corner of a part: cut it with less, or drill that hole");

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

    private static IEnumerable<DxfEntity> Marks(FittedFlat fitted)
    {
        var curves = 0;
        return fitted.Flat.Marks.SelectMany(mark => mark switch
        {
            LineMark line => [new DxfLine(DxfLayer.Mark, line.A, line.B)],
            CurveMark when fitted.Scribed[curves++] is var path => [new DxfPolyline(DxfLayer.Mark, path.Vertices, path.IsClosed)],
            TextMark text => Letters(text),
            _ => throw new ArgumentException($"no such mark: {mark}"),
        });
    }
}
