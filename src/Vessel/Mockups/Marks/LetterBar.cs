using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>A rectangle along a stroke: what letters on a print are made of.</summary>
/// <param name="A">Middle of one end, mm.</param>
/// <param name="B">Middle of the other end.</param>
/// <param name="Width">Across, mm.</param>
internal readonly record struct LetterBar(Point2 A, Point2 B, double Width)
{
    /// <summary>Steps along a stroke at which it is asked whether it is free.</summary>
    private const int Steps = 240;

    private Point2 Along => (B - A).Unit();

    public double Length => (B - A).Length;

    /// <summary>Counter-clockwise.</summary>
    public ImmutableArray<Point2> Corners
    {
        get
        {
            var side = Width / 2 * Along.Turned;
            return [A - side, B - side, B + side, A + side];
        }
    }

    /// <summary>
    /// The longest stretch of a stroke that keeps a gap from bars that stand already; null when none is as long as it is wide. Ends are
    /// square, half a width beyond the stroke's own.
    /// </summary>
    public static LetterBar? Between(Point2 from, Point2 to, double width, double gap, IReadOnlyList<LetterBar> standing)
    {
        var along = from == to ? new Point2(1, 0) : (to - from).Unit();
        var (start, end) = (from - (width / 2 * along), to + (width / 2 * along));
        var side = width / 2 * along.Turned;
        var (best, run) = ((First: 0, Last: -1), 0);
        for (var i = 0; i <= Steps; i++)
        {
            var at = start + ((double)i / Steps * (end - start));
            if (standing.Any(bar => bar.DistanceTo(at - side, at + side) < gap))
                run = i + 1;
            else if (i - run > best.Last - best.First)
                best = (run, i);
        }

        var found = new LetterBar(
            start + ((double)best.First / Steps * (end - start)), start + ((double)best.Last / Steps * (end - start)), width);
        return best.Last > best.First && found.Length >= width - 1e-9 ? found : null;
    }

    /// <summary>Distance of a segment from the bar, mm; zero where it touches.</summary>
    private double DistanceTo(Point2 p, Point2 q)
    {
        var (along, middle) = (Along, 0.5 * (A + B));
        Point2 Local(Point2 at) => new((at - middle).Dot(along), (at - middle).Dot(along.Turned));
        var (a, b, half) = (Local(p), Local(q), new Point2(Length / 2, Width / 2));
        var (enters, leaves) = Narrowed(a.V, b.V - a.V, half.V, Narrowed(a.U, b.U - a.U, half.U, (0, 1)));
        if (enters <= leaves)
            return 0;
        var least = Math.Min(Outside(a), Outside(b));
        foreach (var corner in (Point2[])[half, -half, new(half.U, -half.V), new(-half.U, half.V)])
            least = Math.Min(least, ToSegment(corner, a, b));
        return least;

        double Outside(Point2 at) => double.Hypot(Math.Max(0, Math.Abs(at.U) - half.U), Math.Max(0, Math.Abs(at.V) - half.V));
    }

    /// <summary>The shares of a segment that lie within half a width of zero in one coordinate, of those given.</summary>
    private static (double Enters, double Leaves) Narrowed(double from, double step, double half, (double Enters, double Leaves) of)
    {
        if (step == 0)
            return Math.Abs(from) <= half ? of : (1, 0);
        var (one, other) = ((-half - from) / step, (half - from) / step);
        return (Math.Max(of.Enters, Math.Min(one, other)), Math.Min(of.Leaves, Math.Max(one, other)));
    }

    private static double ToSegment(Point2 at, Point2 a, Point2 b)
    {
        var way = b - a;
        return (at - a - (Math.Clamp((at - a).Dot(way) / way.Dot(way), 0, 1) * way)).Length;
    }
}
