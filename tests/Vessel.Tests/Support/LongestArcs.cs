using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>
/// The plain way to fit arcs, as a measure for a better one: each as long as the tolerance lets it be, one after the
/// other, with both ends on the curve and no heed to the corners that they make there.
/// </summary>
internal static class LongestArcs
{
    private const int Samples = 160;

    public static int Count(Loop2 loop, double tolerance) => loop.Edges.Sum(edge => edge is GraphCurve2
        ? CurveMeasures.Pieces(edge).Sum(piece => Count(edge, piece, tolerance))
        : edge is Arc2 { Sweep: var sweep } && Math.Abs(sweep) > Math.PI ? 2 : 1);

    private static int Count(Curve2 curve, Interval piece, double tolerance)
    {
        var count = 0;
        for (var start = piece.Start; start < piece.End; count++)
        {
            var (good, bad) = (start, piece.End);
            if (Holds(curve, start, bad, tolerance))
                return count + 1;
            while (bad - good > 1e-4 * (bad - start))
            {
                var middle = (good + bad) / 2;
                (good, bad) = Holds(curve, start, middle, tolerance) ? (middle, bad) : (good, middle);
            }

            start = good;
        }

        return count;
    }

    /// <summary>Whether some arc from one place of the curve to another stays within the tolerance.</summary>
    private static bool Holds(Curve2 curve, double start, double end, double tolerance)
    {
        var (a, b) = (curve.At(start), curve.At(end));
        var chord = b - a;
        var points = Enumerable.Range(1, Samples - 1).Select(i => curve.At(start + ((end - start) * i / Samples))).ToList();
        // Half a turn at most, as of those that are measured by it; the greatest distance is convex in the sagitta.
        double Greatest(double sagitta) => points.Max(p => Distance(a, chord, sagitta, p));
        return Convex.Least(Greatest, -chord.Length / 2, chord.Length / 2) <= tolerance;
    }

    private static double Distance(Point2 a, Point2 chord, double sagitta, Point2 p)
    {
        var half = chord.Length / 2;
        if (Math.Abs(sagitta) < 1e-9 * half)
            return Math.Abs(chord.Cross(p - a)) / chord.Length;
        var radius = ((half * half) + (sagitta * sagitta)) / (2 * sagitta);
        var centre = a + (0.5 * chord) + ((sagitta - radius) * chord.Unit().Turned);
        return Math.Abs((p - centre).Length - Math.Abs(radius));
    }
}
