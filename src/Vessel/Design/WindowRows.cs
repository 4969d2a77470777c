using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>How the rows of windows in one tube lie to each other round the girth; angles in radians.</summary>
internal static class WindowRows
{
    /// <summary>
    /// Where a straight line up the tube has most metal on either side, in [0, 2 pi): half-way between the windows of one row;
    /// the back where there are none. Where windows cover every line, the one that cuts into them least; see <see cref="Lap"/>.
    /// </summary>
    /// <param name="radius">Radius of the tube's outside, mm.</param>
    public static double FreeAngle(ImmutableArray<WindowsDesign> rows, double radius)
    {
        if (rows.IsEmpty)
            return Math.PI;
        var best = Turns.From(rows[0].Angle + (Math.PI / rows[0].Count), 0);
        if (rows.Length == 1 || !double.IsFinite(best))
            return best;
        var sides = Sides(rows, radius);
        var (free, reached) = (0.0, sides.Max(side => side.To) - Turns.Full);
        foreach (var (from, to) in sides)
        {
            if (from - reached > free + Ring.Hair)
                (best, free) = ((from + reached) / 2, from - reached);
            reached = Math.Max(reached, to);
        }

        return free > 0 ? Turns.From(best, 0) : sides.Select(side => side.From).MinBy(start => Past(sides, start));
    }

    /// <summary>
    /// How much further than once round a wrap from a line on must go to hold every window whole, with a wall of metal beside it; radians.
    /// </summary>
    /// <param name="radius">Radius of the tube's outside, mm.</param>
    /// <param name="start">The line.</param>
    public static double Lap(ImmutableArray<WindowsDesign> rows, double radius, double wall, double start) =>
        Past(Sides(rows, radius), start) is > Ring.Hair and var past ? past + (wall / radius) : 0;

    /// <summary>Angle by which windows that a line cuts reach beyond it, radians.</summary>
    private static double Past(List<(double From, double To)> sides, double start) =>
        sides.Select(side => Turns.From(side.From, start) + side.To - side.From - start - Turns.Full).Append(0).Max();

    /// <summary>Sides of all windows round the tube, in their order, radians.</summary>
    private static List<(double From, double To)> Sides(ImmutableArray<WindowsDesign> rows, double radius) =>
    [
        .. from row in rows
           let half = row.Width / 2 / radius
           from i in Enumerable.Range(0, row.Count)
           let start = Turns.From(row.Angle + (Turns.Full * i / row.Count) - half, 0)
           orderby start
           select (start, start + (2 * half)),
    ];

    /// <summary>
    /// Where the wrap of a tube begins that has a side of its own to begin on, at 0: there unless a window is in the way; else between two
    /// windows.
    /// </summary>
    /// <param name="wall">Width of metal, which is kept beside a window, mm.</param>
    public static double Start(ImmutableArray<WindowsDesign> rows, double radius, double wall) =>
        rows.All(row => Off(row, 0) > ((row.Width / 2) + wall) / radius) ? 0
        : Between(rows, radius);

    /// <summary>Where any other wrap begins: half-way between two windows, or at the back.</summary>
    public static double Between(ImmutableArray<WindowsDesign> rows, double radius) => rows is [var only]
        ? Turns.From(only.Angle - (Math.PI / only.Count), 0)
        : FreeAngle(rows, radius);

    /// <summary>What the opening that a row makes is called; the first is number 0.</summary>
    public static string NameOf(string tube, int row) =>
        row == 0 ? $"windows of {tube}" : string.Create(CultureInfo.InvariantCulture, $"windows {row + 1} of {tube}");

    /// <summary>What the open inner end of a port's tube with windows is called.</summary>
    public static string EndOf(string port) => $"inner end of {port}";

    /// <summary>Angle from a line up the tube to the middle of the nearest window of a row.</summary>
    public static double Off(WindowsDesign row, double angle) => Math.Abs(Math.IEEERemainder(angle - row.Angle, Turns.Full / row.Count));

    /// <summary>Least distance of the middles of two rows' windows round the girth.</summary>
    public static double Nearest(WindowsDesign a, WindowsDesign b)
    {
        // Differences of middles run in steps of the turn over the least common multiple of both counts.
        var step = Turns.Full / a.Count / b.Count * Common(a.Count, b.Count);
        return Math.Abs(Math.IEEERemainder(a.Angle - b.Angle, step));
    }

    private static int Common(int a, int b) => b == 0 ? a : Common(b, a % b);
}
