using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A point where open edges end, one vertex for all of them. Identity is by reference.</summary>
public sealed class Corner3(Vector3 at)
{
    public Vector3 At { get; } = at;
}

/// <summary>
/// A curve in space where two faces of a solid meet, closed unless it has ends. Flattened once, so that both faces get the
/// same points. Identity is by reference.
/// </summary>
/// <param name="at">Position at a parameter of <paramref name="domain"/>; both ends of a closed one are the same point.</param>
/// <param name="breaks">Parameters that must become vertices: corners; ascending, inside the domain.</param>
public sealed class Edge3(Func<double, Vector3> at, Interval domain, ImmutableArray<double> breaks)
{
    /// <summary>Where the domain starts and ends; null for a closed edge.</summary>
    public (Corner3 Start, Corner3 End)? Ends { get; init; }

    /// <summary>Fewest pieces into which a closed edge is flattened: so many that even a tiny hole has area.</summary>
    public int LeastPieces { get; init; } = 8;

    public Interval Domain { get; } = domain;

    public ImmutableArray<double> Breaks { get; } = breaks;

    public static Edge3 Circle(double radius, double z) =>
        new(t => new(radius * Math.Cos(t), radius * Math.Sin(t), z), Interval.Turn, []);

    public Vector3 At(double t) => at(t);
}

/// <summary>
/// A piece of a solid's boundary. A closed set: <see cref="Skin"/>, <see cref="SideFace"/>, <see cref="PerforatedFaces"/>.
/// </summary>
public abstract record Face
{
    private protected Face()
    {
    }
}

/// <summary>One boundary of a skin, or a piece of one: an edge and its image in the surface's chart.</summary>
/// <param name="Winding">How often the image goes round a surface that comes round again: 0, 1 or -1.</param>
public sealed record Bound(Edge3 Edge, Func<double, Point2> Image, int Winding = 0);

/// <summary>The part of a surface that lies between its bounds, in one piece.</summary>
/// <param name="Outward">Whether (d/du x d/dv) of the chart points out of the metal.</param>
public sealed record Skin(Surface On, ImmutableArray<Bound> Bounds, bool Outward) : Face;

/// <summary>
/// The wall between two closed edges of one domain: straight from A(t) to B(t), or bulged along <paramref name="Through"/>.
/// </summary>
/// <param name="Through">Position at (t, w) with w from 0 on A to 1 on B; null for a straight wall.</param>
public sealed record SideFace(Edge3 A, Edge3 B, Func<double, double, Vector3>? Through = null) : Face
{
    /// <summary>Position at (t, w) with w from 0 on A to 1 on B.</summary>
    public Vector3 At(double t, double w) => Through is { } through ? through(t, w) : ((1 - w) * A.At(t)) + (w * B.At(t));
}

/// <summary>
/// Both faces of a flat plate that is drilled square by rule, and the walls of those holes: one arrangement of facets serves
/// both faces. The chart of either is that of the lattice.
/// </summary>
/// <param name="Upper">Face on the side of its frame's +Z.</param>
/// <param name="Lower">Parallel to it, below; of equal X and Y.</param>
/// <param name="Bounds">The outer rim first, then a bore: an edge on either face with their common image.</param>
public sealed record PerforatedFaces(
    PlaneSurface Upper,
    PlaneSurface Lower,
    ImmutableArray<(Edge3 Upper, Edge3 Lower, Func<double, Point2> Image)> Bounds,
    Lattice2 Field) : Face;

/// <summary>
/// Metal bounded by faces that share edges. Each edge is used by exactly two faces, so the solid is closed by
/// construction and its genus is known.
/// </summary>
public sealed record Solid
{
    public Solid(ImmutableArray<Face> faces)
    {
        Faces = faces;
        var uses = new Dictionary<Edge3, int>();
        foreach (var edge in faces.SelectMany(EdgesOf))
            uses[edge] = uses.GetValueOrDefault(edge) + 1;
        if (uses.Values.Any(count => count != 2))
            throw new ArgumentException("an edge of a solid must be used by exactly two faces");
    }

    public ImmutableArray<Face> Faces { get; }

    /// <summary>
    /// Handles: 0 for a ball, 1 for a ring. A skin with n bounds has Euler characteristic 2 - n, a wall and a closed edge 0, an
    /// open edge without its ends -1, a corner 1; they add up to 2 - 2 genus. A hole of a field bounds two skins.
    /// </summary>
    public int Genus => 1 - ((Faces.Sum(face => face switch
    {
        Skin skin => 2 - Loops(skin),
        PerforatedFaces plate => 2 * (2 - plate.Bounds.Length - plate.Field.Count),
        _ => 0,
    }) + Corners(Faces.SelectMany(EdgesOf)).Count - Faces.SelectMany(EdgesOf).Distinct().Count(edge => edge.Ends is not null)) / 2);

    /// <summary>Closed bounds, and rings of open ones.</summary>
    private static int Loops(Skin skin)
    {
        var open = skin.Bounds.Where(bound => bound.Edge.Ends is not null).Select(bound => bound.Edge).ToList();
        var ringOf = Corners(open).ToDictionary(corner => corner, corner => corner);
        Corner3 Ring(Corner3 corner) => ringOf[corner] == corner ? corner : ringOf[corner] = Ring(ringOf[corner]);
        foreach (var edge in open)
            ringOf[Ring(edge.Ends!.Value.Start)] = Ring(edge.Ends.Value.End);
        return skin.Bounds.Length - open.Count + ringOf.Count(pair => pair.Key == pair.Value);
    }

    private static HashSet<Corner3> Corners(IEnumerable<Edge3> edges) =>
        [.. edges.SelectMany(edge => edge.Ends is var (start, end) ? new[] { start, end } : [])];

    private static IEnumerable<Edge3> EdgesOf(Face face) => face switch
    {
        Skin skin => skin.Bounds.Select(bound => bound.Edge),
        SideFace wall => [wall.A, wall.B],
        PerforatedFaces plate => plate.Bounds.SelectMany(bound => new[] { bound.Upper, bound.Lower }),
        _ => throw new ArgumentOutOfRangeException(nameof(face)),
    };
}
