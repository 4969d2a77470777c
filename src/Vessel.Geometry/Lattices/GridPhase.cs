using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Searches the phase of a grid for which most holes fit.</summary>
/// <remarks>
/// The plate is round and every grid has two mirrors and a half turn, so that phases (u, v) with 0 &lt;= u &lt;= 1 and
/// 0 &lt;= v &lt;= 1/2 stand for all others: a mirror takes u to -u, a step along the row u to u + 2, and a step to the next
/// staggered row with both mirrors (u, v) to (1 - u, 1 - v). The count is a step function with no slope to follow, so a
/// net of phases is counted and the best is refined by ever smaller steps. Symmetric phases come first and yield only
/// to more holes.
/// </remarks>
internal static class GridPhase
{
    private const int Net = 16;

    private const double FinestStep = 1.0 / 1024;

    /// <summary>A hole at the centre; then midway between two in a row, between two rows, between three, between four.</summary>
    private static readonly ImmutableArray<Point2> _symmetric =
        [new(0, 0), new(1, 0), new(0, 0.5), new(1, 0.5), new(0.5, 0.5), new(0.5, 0), new(1, 1.0 / 3)];

    public static Point2 Fullest(Func<Point2, int> count)
    {
        var (best, most) = (default(Point2), -1);
        bool Try(Point2 phase)
        {
            var holes = count(phase);
            if (holes <= most)
                return false;
            (best, most) = (phase, holes);
            return true;
        }

        foreach (var phase in _symmetric)
            Try(phase);
        for (var i = 0; i <= Net; i++)
        {
            for (var k = 0; k <= Net / 2; k++)
                Try(new((double)i / Net, (double)k / Net));
        }

        for (var step = 0.5 / Net; step >= FinestStep; step /= 2)
        {
            while (Around(best, step).Any(Try))
            {
            }
        }

        return best;
    }

    private static IEnumerable<Point2> Around(Point2 phase, double step)
    {
        for (var du = -1; du <= 1; du++)
        {
            for (var dv = -1; dv <= 1; dv++)
                yield return phase + new Point2(du * step, dv * step);
        }
    }
}
