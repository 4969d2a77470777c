using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Exact curves as points on them, with no chord further off than asked.</summary>
public static class Chords
{
    /// <summary>Even a tiny circle is seen to be round.</summary>
    private const int LeastPieces = 8;

    /// <summary>Halvings of one piece; each takes three quarters of what a chord stands off.</summary>
    private const int MostHalvings = 10;

    /// <summary>The loop's corners in its order; the last leads back to the first.</summary>
    /// <param name="deviation">Greatest distance between chord and curve, mm; above zero.</param>
    public static ImmutableArray<Point2> Of(Loop2 loop, double deviation) =>
        [.. loop.Edges.SelectMany(edge => Of(edge, deviation).SkipLast(1))];

    /// <summary>Points from start to end, both included.</summary>
    public static IReadOnlyList<Point2> Of(Curve2 curve, double deviation)
    {
        if (curve is Line2 line)
            return [line.A, line.B];
        if (curve is Arc2 arc)
            return Even(arc, Pieces(arc, deviation));
        var points = new List<Point2> { curve.Start };
        foreach (var piece in CurveMeasures.Pieces(curve))
        {
            for (var i = 0; i < LeastPieces; i++)
                Halve(curve, piece.At((double)i / LeastPieces), piece.At((i + 1.0) / LeastPieces), deviation, MostHalvings, points);
        }

        return points;
    }

    private static IReadOnlyList<Point2> Even(Arc2 arc, int pieces) =>
        [.. Enumerable.Range(0, pieces + 1).Select(i => arc.At((double)i / pieces))];

    /// <summary>A chord over an angle a stands r (1 - cos(a / 2)) off.</summary>
    private static int Pieces(Arc2 arc, double deviation)
    {
        var turn = 2 * Math.Acos(Math.Clamp(1 - (deviation / arc.Radius), -1, 1));
        var least = Math.Ceiling(LeastPieces * Math.Abs(arc.Sweep) / Turns.Full);
        return (int)Math.Max(least, Math.Ceiling(Math.Abs(arc.Sweep) / Math.Max(turn, Turns.Full / 4096)));
    }

    private static void Halve(Curve2 curve, double from, double to, double deviation, int left, List<Point2> points)
    {
        var (a, b, middle) = (curve.At(from), curve.At(to), (from + to) / 2);
        if (left > 0 && (Off(curve.At(middle), a, b) > deviation
            || Off(curve.At((from + middle) / 2), a, b) > deviation
            || Off(curve.At((middle + to) / 2), a, b) > deviation))
        {
            Halve(curve, from, middle, deviation, left - 1, points);
            Halve(curve, middle, to, deviation, left - 1, points);
            return;
        }

        points.Add(b);
    }

    private static double Off(Point2 p, Point2 a, Point2 b)
    {
        var along = b - a;
        return along.Length > 0 ? Math.Abs(along.Cross(p - a)) / along.Length : (p - a).Length;
    }
}
