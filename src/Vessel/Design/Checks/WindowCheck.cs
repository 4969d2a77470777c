using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Whether windows find room round a tube.</summary>
internal static class WindowCheck
{
    /// <param name="seam">Angle of its long seam, radians; null for none.</param>
    public static IEnumerable<Fault> Find(
        UnitFormat shown, ImmutableArray<WindowsDesign> rows, Tube tube, double? seam, string seamPath)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            foreach (var fault in Find(shown, rows[i], tube))
                yield return fault;
            for (var j = 0; j < i; j++)
            {
                if (Meeting(shown, rows[j], rows[i], tube) is { } meeting)
                    yield return meeting;
            }
        }

        if (rows.Sum(row => row.Count) > Limits.Windows)
        {
            yield return new Fault(FaultCodes.TooManyHoles, $"{rows[0].Path}.count", $"'{tube.Name}' has too many windows.",
                shown.Number(KeyKind.Count, rows.Sum(row => row.Count)), $"at most {shown.Number(KeyKind.Count, Limits.Windows)}",
                "Use fewer windows.");
        }
        else if (seam is { } angle)
        {
            foreach (var row in rows)
            {
                if (SeamStraddle(shown, tube, row, rows, angle, seamPath) is { } over)
                    yield return over;
            }
        }
    }

    private static IEnumerable<Fault> Find(UnitFormat shown, WindowsDesign windows, Tube tube)
    {
        var (name, outside, wall, height) = (tube.Name, tube.Outside, tube.Wall, tube.Height);
        var widest = (Math.PI * outside / windows.Count) - wall;
        if (windows.Width > widest + Ring.Hair)
        {
            yield return new Fault(FaultCodes.WindowsOverlap, $"{windows.Path}.{WidthKey(windows)}",
                $"The windows of '{name}' leave less than one wall of metal between them.", shown.Length(windows.Width),
                $"at most {shown.LengthDown(widest)}",
                widest > 0 ? $"Use a width of at most {shown.LengthDown(widest)}, or fewer windows." : "Use fewer windows.");
        }

        if (windows.Up < wall - Ring.Hair)
        {
            yield return NearEnd("up", tube.Below, windows.Up, $"at least {shown.LengthUp(wall)}");
        }
        else if (windows.Up + windows.Height > height - wall + Ring.Hair)
        {
            yield return NearEnd(windows.IsRound ? "diameter" : "height", tube.Above, windows.Up + windows.Height,
                $"'up' and height together at most {shown.LengthDown(height - wall)}");
        }

        var half = Math.Min(windows.Width, windows.Height) / 2;
        if (windows.Corner > half + Ring.Hair)
        {
            yield return new Fault(FaultCodes.WindowCornerTooLarge, $"{windows.Path}.corner",
                $"The corners of the windows of '{name}' are larger than half of their smaller side.",
                shown.Length(windows.Corner), $"at most {shown.LengthDown(half)}", "Make the corner's radius smaller.");
        }

        Fault NearEnd(string key, string where, double given, string limit) => new(FaultCodes.WindowNearEnd,
            $"{windows.Path}.{key}", $"Less than one wall of metal is left {where} the windows of '{name}'.",
            shown.Length(given), limit, "Make the windows lower, or move them.");
    }

    /// <summary>Two rows that reach past each other in height must keep apart round the girth.</summary>
    private static Fault? Meeting(UnitFormat shown, WindowsDesign a, WindowsDesign b, Tube tube)
    {
        var between = Math.Max(a.Up - b.Up - b.Height, b.Up - a.Up - a.Height);
        var aside = (WindowRows.Nearest(a, b) * tube.Outside / 2) - ((a.Width + b.Width) / 2);
        var apart = Math.Max(between, aside);
        return !(apart < tube.Wall - Ring.Hair)
            ? null
            : new Fault(FaultCodes.WindowsOverlap, $"{b.Path}.up",
                $"Two rows of windows of '{tube.Name}' leave less than one wall of metal between them.", shown.Length(Math.Max(0, apart)),
                $"at least {shown.LengthUp(tube.Wall)}", "Move one row up or down, or turn it.");
    }

    private static string WidthKey(WindowsDesign windows) => windows.IsRound ? "diameter" : "width";

    private static bool Covers(WindowsDesign row, Tube tube, double angle) => WindowRows.Off(row, angle) <= row.Width / tube.Outside;

    private static Fault? SeamStraddle(
        UnitFormat shown, Tube tube, WindowsDesign windows, ImmutableArray<WindowsDesign> rows, double seam, string path)
    {
        var half = windows.Width / tube.Outside;
        if (!Covers(windows, tube, seam) || half >= Math.PI / windows.Count)
            return null;
        var free = WindowRows.FreeAngle(rows, tube.Outside / 2);
        return new Fault(FaultCodes.WindowOverSeam, path,
            $"A window of '{tube.Name}' stands over the seam of its skirt.", shown.Angle(seam),
            $"more than {shown.AngleUp(half)} from the middle of a window",
            rows.Any(row => Covers(row, tube, free))
                ? "Cut the skirt from tube, or turn the rows so that windows stand one above the other, and the seam between them."
                : $"Turn the seam: 'seam_angle: {shown.Angle(free)}' is clear of every window.");
    }

    /// <param name="Outside">Diameter, mm.</param>
    /// <param name="Height">Height of the tube, mm.</param>
    internal sealed record Tube(string Name, double Outside, double Wall, double Height, string Above = "above", string Below = "below");
}
