using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Planning;

/// <summary>A flat to be nested: its outline as a polygon, and how it may lie to the grain.</summary>
/// <param name="Outline">Counter-clockwise, within <see cref="Flatness"/> outside or inside of the exact one.</param>
/// <param name="Turns">Quarter turns that are allowed: what is rolled or bent keeps its bend lines across the grain.</param>
/// <param name="Area">Area of the exact outline, openings not taken off, mm2.</param>
public sealed record NestPiece(Part? Part, string Name, ImmutableArray<Point2> Outline, ImmutableArray<int> Turns, double Area)
{
    /// <summary>Greatest distance of the polygon from the outline, mm.</summary>
    public const double Flatness = 0.05;

    public static NestPiece Of(Part part)
    {
        var outer = part.Flat!.Cut.Outer;
        return new(
            part, part.Name, [.. outer.Edges.SelectMany(Points)],
            TurnsOf(part),
            CurveMeasures.Area(outer));
    }

    /// <summary>The sheet's grain runs along its length. A rolled part's bend lines run along y, as drawn.</summary>
    private static ImmutableArray<int> TurnsOf(Part part)
    {
        if (part.Flat!.Bends is [var bend, ..])
            return Math.Abs(bend.A.V - bend.B.V) < Math.Abs(bend.A.U - bend.B.U) ? [1, 3] : [0, 2];
        return part.Flat.From is RolledDevelopment ? [0, 2] : [0, 1, 2, 3];
    }

    /// <summary>All points of an edge but its last.</summary>
    private static IEnumerable<Point2> Points(Curve2 edge)
    {
        if (edge is Line2)
            return [edge.Start];
        // Twice as many chords have a quarter of the sagitta.
        for (var n = 8; ; n *= 2)
        {
            var points = Enumerable.Range(0, n + 1).Select(i => edge.At(edge.Domain.At((double)i / n))).ToList();
            var worst = Enumerable.Range(0, n).Max(i =>
                Sagitta(points[i], points[i + 1], edge.At(edge.Domain.At((i + 0.5) / n))));
            if (worst <= Flatness / 2 || n >= 2048)
                return points.Take(n);
        }
    }

    private static double Sagitta(Point2 a, Point2 b, Point2 middle)
    {
        var chord = b - a;
        return chord.Length > 0 ? Math.Abs(chord.Cross(middle - a)) / chord.Length : (middle - a).Length;
    }
}

/// <summary>A piece in its place.</summary>
/// <param name="Sheet">Number of the sheet, from 0.</param>
/// <param name="QuarterTurns">Counter-clockwise, about the origin of the flat, before it is moved.</param>
/// <param name="Shift">mm.</param>
public readonly record struct NestPlace(int Piece, int Sheet, int QuarterTurns, Point2 Shift)
{
    public Point2 Of(Point2 p) => Turned(p, QuarterTurns) + Shift;

    public static Point2 Turned(Point2 p, int quarters) => (quarters & 3) switch
    {
        0 => p,
        1 => new(-p.V, p.U),
        2 => new(-p.U, -p.V),
        _ => new(p.V, -p.U),
    };
}
