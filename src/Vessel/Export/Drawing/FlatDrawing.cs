using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Drawing;

/// <summary>
/// What is drawn of a flat besides its metal and marks (<see cref="FittedFlat"/>), for cutter, paper and report: millimetres, outside face
/// up.
/// </summary>
internal static class FlatDrawing
{
    /// <summary>The holes of fields, a pattern each.</summary>
    /// <param name="off">Length by which a radius is smaller than its hole's, mm.</param>
    /// <exception cref="OutputException">A hole is no larger than that.</exception>
    public static IEnumerable<Item> Fields(FittedFlat fitted, double off = 0) =>
        fitted.Flat.Cut.Fields.Select(field => Pattern.On(field, Hole(default, field.HoleRadius - off)));

    /// <summary>Middles of the bends.</summary>
    public static IEnumerable<Item> Bends(Flat flat) => flat.Bends.Select(bend => Stroke.Line(bend.A, bend.B, Pens.Bend));

    /// <summary>
    /// What a bend is called, beside the beginning of its line, so that it stands off marks in the middle; smaller where the line is short.
    /// </summary>
    /// <param name="letter">Height of a capital, mm or units of the page.</param>
    public static Text BendWords(Point2 a, Point2 b, string words, double letter, Pen pen)
    {
        var way = (b - a).Unit();
        return Text.Fitted(words, a + (letter * ((0.8 * way) + (0.5 * way.Turned))), letter,
            (b - a).Length - (1.6 * letter)) with
        { Angle = way.Angle, Pen = pen };
    }

    /// <summary>
    /// The outlines moved off the part, on the waste side, by half the width of a cut; or the same of the frame that holds it.
    /// </summary>
    /// <param name="off">Half the width of a cut, mm.</param>
    /// <exception cref="OutputException">The cut is wider than a hole or corner lets it be.</exception>
    public static IEnumerable<Item> Kerf(FittedFlat fitted, HeldPart? held, double off)
    {
        var outer = held is null ? [Moved(fitted.Outer, off, off)] : held.Slots.Append(held.Frame).Select(chain => (Item)Chain(chain, off));
        return fitted.Metal.Outlines.SkipLast(1).Select(hole => Moved(hole, -off, off)).Concat(outer);
    }

    /// <param name="outward">What a circle's radius grows by, mm.</param>
    /// <param name="off">What a chain moves by to its right, where the waste is, mm.</param>
    private static Item Moved(Item outline, double outward, double off) => outline is Circle circle
        ? Hole(circle.Center, circle.Radius + outward)
        : Chain(((Stroke)outline).Vertices, off);

    private static Stroke Chain(ImmutableArray<Bulge> vertices, double off) =>
        new(off == 0 ? vertices : KerfOffset.Right(vertices, off) ?? throw TooWide(), Pens.Cut, Closed: true);

    private static Circle Hole(Point2 center, double radius) => radius > 0 ? new(center, radius, Pens.Cut) : throw TooWide();

    private static OutputException TooWide() =>
        new("the kerf is wider than the narrowest hole or corner of a part: cut it with less, or drill that hole");
}
