using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Drawing;

/// <summary>
/// A flat as cutter, paper and report show it: its curves fitted once by lines and arcs, for all that is drawn and told of it.
/// </summary>
/// <param name="Metal">Between closed outlines, those of the flat's holes first and in its order: once the outer one is cut the part may
/// move. Holes of fields are left out: they stay a rule.</param>
/// <param name="Marks">What is scribed, in the flat's order.</param>
/// <param name="Deviation">Greatest distance between what is drawn and the exact lines, cut or scribed, mm.</param>
public sealed record FittedFlat(Flat Flat, Area Metal, ImmutableArray<Item> Marks, double Deviation)
{
    public Item Outer => Metal.Outlines[^1];

    /// <summary>Lines and arcs cut; a circle is one.</summary>
    public int Entities => Flat.Cut.FieldHoles + Metal.Outlines.Sum(outline => outline is Stroke stroke ? stroke.Vertices.Length : 1);

    /// <param name="tolerance">Greatest deviation allowed, mm.</param>
    public static FittedFlat Of(Flat flat, double tolerance)
    {
        var deviation = 0.0;
        Item Outline(Loop2 loop)
        {
            if (loop.AsCircle is { } circle)
                return new Circle(circle.Center, circle.Radius, Pens.Cut);
            var fit = ArcFit.Fit(loop, tolerance);
            deviation = Math.Max(deviation, fit.Deviation);
            return new Stroke(fit.Vertices, Pens.Cut, Closed: true);
        }

        Item Curve(Curve2 curve)
        {
            var fit = ArcFit.Fit(curve, tolerance);
            deviation = Math.Max(deviation, fit.Deviation);
            return new Stroke(fit.Vertices, Pens.Mark, fit.IsClosed);
        }

        Area metal = new([.. flat.Cut.Holes.Append(flat.Cut.Outer).Select(Outline)], Pens.Cut);
        ImmutableArray<Item> marks =
        [
            .. flat.Marks.Select(mark => mark switch
            {
                LineMark line => Stroke.Line(line.A, line.B, Pens.Mark),
                CurveMark curve => Curve(curve.Curve),
                TextMark text => Text.Round(text.Text, text.Center, text.Height, text.Angle, Pens.Mark),
                _ => throw new ArgumentException($"no such mark: {mark}"),
            }),
        ];
        return new(flat, metal, marks, deviation);
    }
}
