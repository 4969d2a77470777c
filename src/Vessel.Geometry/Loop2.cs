using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed chain of curves: each ends where the next begins, the last where the first begins.</summary>
public sealed record Loop2(ImmutableArray<Curve2> Edges)
{
    /// <summary>The circle that this loop is, or null.</summary>
    public Arc2? AsCircle => Edges is [Arc2 { IsCircle: true } circle] ? circle : null;

    public static Loop2 Circle(Point2 center, double radius, bool clockwise = false) =>
        new([Arc2.Circle(center, radius, clockwise)]);

    /// <summary>The closed polygon through the corners, in their order.</summary>
    public static Loop2 Polygon(params ReadOnlySpan<Point2> corners)
    {
        var edges = ImmutableArray.CreateBuilder<Curve2>(corners.Length);
        for (var i = 0; i < corners.Length; i++)
            edges.Add(new Line2(corners[i], corners[(i + 1) % corners.Length]));
        return new(edges.MoveToImmutable());
    }
}

/// <summary>
/// A bounded piece of a plane. The outer loop runs counter-clockwise and the holes clockwise, so that metal is
/// always on the left.
/// </summary>
public sealed record Region2(Loop2 Outer, ImmutableArray<Loop2> Holes)
{
    /// <summary>Holes by rule, besides <see cref="Holes"/>; they lie inside the outer loop and meet no other hole.</summary>
    public ImmutableArray<Lattice2> Fields { get; init; } = [];

    /// <summary>Count of the holes of all fields together.</summary>
    public int FieldHoles => Fields.Sum(lattice => lattice.Count);
}
