using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Drawing;

/// <summary>
/// An item is something that is drawn with one pen, in millimetres, x to the right and y up, with curves as lines and arcs. A drawing is a
/// list of items in the order in which they are laid down; each format has one writer that takes any of them. A closed set:
/// <see cref="Stroke"/>, <see cref="Circle"/>, <see cref="Area"/>, <see cref="Text"/>, <see cref="Pattern"/>.
/// </summary>
public abstract record Item(Pen Pen);

/// <summary>A stroke is a chain of lines and arcs; joins and ends are round.</summary>
/// <param name="Vertices">Vertices, at least two; of a closed stroke the last leads back to the first.</param>
public sealed record Stroke(ImmutableArray<Bulge> Vertices, Pen Pen, bool Closed = false) : Item(Pen)
{
    /// <summary>The lines and arcs, in order.</summary>
    public IEnumerable<Curve2> Edges
    {
        get
        {
            for (var i = 0; i < Vertices.Length - (Closed ? 0 : 1); i++)
                yield return Vertices[i].To(Vertices[(i + 1) % Vertices.Length].At);
        }
    }

    /// <summary>The one line that an open stroke of two vertices is, or null.</summary>
    public Line2? AsLine => !Closed && Vertices is [{ Value: 0 } a, var b] ? new(a.At, b.At) : null;

    /// <summary>A straight line.</summary>
    public static Stroke Line(Point2 a, Point2 b, Pen pen) => Through([a, b], pen);

    /// <summary>Straight lines from point to point.</summary>
    public static Stroke Through(IEnumerable<Point2> points, Pen pen, bool closed = false) =>
        new([.. points.Select(p => new Bulge(p, 0))], pen, closed);

    /// <summary>The outline of a box.</summary>
    public static Stroke Rectangle(Box2 box, Pen pen) =>
        Through([box.Min, new(box.Max.U, box.Min.V), box.Max, new(box.Min.U, box.Max.V)], pen, closed: true);

    /// <summary>Two lines that meet in their middles.</summary>
    /// <param name="arm">Half a line's length, mm.</param>
    public static ImmutableArray<Item> Cross(Point2 at, double arm, Pen pen) =>
    [
        Line(at - new Point2(arm, 0), at + new Point2(arm, 0), pen),
        Line(at - new Point2(0, arm), at + new Point2(0, arm), pen),
    ];

    /// <summary>Points of the line, none of whose chords stands off an arc by more than <paramref name="deviation"/>, mm.</summary>
    public ImmutableArray<Point2> Flattened(double deviation)
    {
        var points = Edges.SelectMany(edge => Chords.Of(edge, deviation).SkipLast(1));
        return Closed ? [.. points] : [.. points, Vertices[^1].At];
    }
}

/// <summary>A circle is a whole one; its radius is above zero, mm.</summary>
public sealed record Circle(Point2 Center, double Radius, Pen Pen) : Item(Pen)
{
    /// <summary>The circle as a closed stroke of two halves.</summary>
    public Stroke AsStroke => new([new(Center + new Point2(Radius, 0), 1), new(Center - new Point2(Radius, 0), 1)], Pen, Closed: true);
}

/// <summary>
/// An area lies between closed outlines; where two overlap there is a hole (even-odd). A pen that does not fill draws its outlines.
/// </summary>
/// <param name="Outlines">Closed strokes and circles, drawn in their order.</param>
public sealed record Area(ImmutableArray<Item> Outlines, Pen Pen) : Item(Pen)
{
    /// <summary>The area within one polygon.</summary>
    public static Area Within(IEnumerable<Point2> corners, Pen pen) => new([Stroke.Through(corners, pen, closed: true)], pen);
}

/// <summary>
/// A pattern is equal drawings at many places, such as the holes of a screen: they are made one by one while they are written.
/// </summary>
/// <param name="Motif">Drawn round the origin.</param>
/// <param name="Places">Where the origin goes; walked through anew by everyone who asks.</param>
/// <param name="Count">Number of the places.</param>
public sealed record Pattern(ImmutableArray<Item> Motif, IEnumerable<Point2> Places, int Count, Pen Pen) : Item(Pen)
{
    /// <summary>A pattern with its motif at the middle of each hole of a lattice.</summary>
    public static Pattern On(Lattice2 lattice, params ImmutableArray<Item> motif) =>
        new(motif, lattice.Centers(), lattice.Count, motif[0].Pen);

    /// <summary>One place after another.</summary>
    public IEnumerable<Item> Items => Places.SelectMany(at => Motif.Select(item => Placing.Placed(item, 1, at)));
}
