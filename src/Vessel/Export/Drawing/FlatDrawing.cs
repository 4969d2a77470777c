using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Drawing;

/// <summary>
/// A flat as items, drawn once for cutter, paper and report: millimetres of the flat, outside face up. Each of its lists stands alone, since a report
/// fills the metal before it draws upon it and a service for cutting takes no marks.
/// </summary>
internal static class FlatDrawing
{
    /// <summary>The holes of fields, a pattern each.</summary>
    /// <param name="off">By how much a radius is smaller than its hole's, mm.</param>
    /// <exception cref="OutputException">A hole is no larger than that.</exception>
    public static IEnumerable<Item> Fields(FittedFlat fitted, double off = 0) =>
        fitted.Flat.Cut.Fields.Select(field => Pattern.On(field, Hole(default, field.HoleRadius - off)));

    /// <summary>The metal between closed outlines, the holes first: once the outer one is cut the part may move.</summary>
    public static Area Metal(FittedFlat fitted) => new([.. fitted.Holes.Append(fitted.Outer).Select(outline => Outline(outline, Pens.Cut))], Pens.Cut);

    /// <summary>One outline.</summary>
    public static Item Outline(FittedOutline outline, Pen pen) => outline.Fit is { } fit
        ? new Stroke(fit.Vertices, pen, Closed: true)
        : new Circle(outline.Exact.AsCircle!.Center, outline.Exact.AsCircle.Radius, pen);

    /// <summary>Middles of the bends.</summary>
    public static IEnumerable<Item> Bends(Flat flat) => flat.Bends.Select(bend => Stroke.Line(bend.A, bend.B, Pens.Bend));

    /// <summary>What a bend is called, beside the beginning of its line, so that it stands off marks in the middle; smaller where the line is short.</summary>
    /// <param name="letter">Height of a capital, mm or units of the page.</param>
    public static Text BendWords(Point2 a, Point2 b, string words, double letter, Pen pen)
    {
        var way = (b - a).Unit();
        return Text.Fitted(words, a + (letter * ((0.8 * way) + (0.5 * way.Turned))), letter, (b - a).Length - (1.6 * letter)) with { Angle = way.Angle, Pen = pen };
    }

    /// <summary>What is scribed, in its order.</summary>
    public static IEnumerable<Item> Marks(FittedFlat fitted)
    {
        var curves = 0;
        return fitted.Flat.Marks.Select(mark => mark switch
        {
            LineMark line => (Item)Stroke.Line(line.A, line.B, Pens.Mark),
            CurveMark when fitted.Scribed[curves++] is var path => new Stroke(path.Vertices, Pens.Mark, path.IsClosed),
            TextMark text => Text.Round(text.Text, text.Center, text.Height, text.Angle, Pens.Mark),
            _ => throw new ArgumentException($"no such mark: {mark}"),
        });
    }

    /// <summary>The outlines moved off the part, on the waste side, by half the width of a cut; or the same of the frame that holds it.</summary>
    /// <param name="off">Half the width of a cut, mm.</param>
    /// <exception cref="OutputException">The cut is wider than a hole or corner lets it be.</exception>
    public static IEnumerable<Item> Kerf(FittedFlat fitted, HeldPart? held, double off)
    {
        IEnumerable<Item> outer = held is null ? [Moved(fitted.Outer, off, off)] : held.Slots.Append(held.Frame).Select(chain => Chain(chain, off));
        return fitted.Holes.Select(hole => Moved(hole, -off, off)).Concat(outer);
    }

    /// <param name="outward">What a circle's radius grows by, mm.</param>
    /// <param name="off">What a chain moves by to its right, where the waste is, mm.</param>
    private static Item Moved(FittedOutline outline, double outward, double off) => Outline(outline, Pens.Cut) switch
    {
        Stroke chain => Chain(chain.Vertices, off),
        Circle circle => Hole(circle.Center, circle.Radius + outward),
        var other => throw new ArgumentException($"no outline: {other}"),
    };

    private static Stroke Chain(ImmutableArray<Bulge> vertices, double off) =>
        new(off == 0 ? vertices : KerfOffset.Right(vertices, off) ?? throw TooWide(), Pens.Cut, Closed: true);

    private static Circle Hole(Point2 center, double radius) => radius > 0 ? new(center, radius, Pens.Cut) : throw TooWide();

    private static OutputException TooWide() => new("the kerf is wider than the narrowest hole or corner of a part: cut it with less, or drill that hole");
}
