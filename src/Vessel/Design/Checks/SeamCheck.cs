using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Ports over the long seam of a rolled shell.</summary>
internal static class SeamCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, IReadOnlyList<ShellHole> holes)
    {
        var (shown, shell) = (new Shown(design.Units), design.Shell);
        return shell.Courses.SelectMany(course =>
            Find(shown, course, [.. holes.Where(hole => shell.IsPlain || shell.CourseAt(hole.Port.Place.Height) == course)]));
    }

    private static IEnumerable<Fault> Find(Shown shown, ShellCourse course, List<ShellHole> holes)
    {
        var half = course.RootGap / 2 / Math.Min(course.Low, course.High);
        if (!course.IsRolled || !double.IsFinite(course.SeamAngle + half))
            yield break;
        var key = course.SeamPath[(course.SeamPath.LastIndexOf('.') + 1)..];
        var taken = holes.Select(h => new Interval(h.Angles.Start - half, h.Angles.End + half)).ToList();
        for (var i = 0; i < holes.Count; i++)
        {
            if (Turns.From(course.SeamAngle, taken[i].Start) > taken[i].End)
                continue;
            var remedy = FreeAngle(taken) is { } free
                ? $"Turn the seam: '{key}: {shown.Angle(free)}' is clear of every port."
                : "Ports take the whole girth: use fewer or smaller ones, or make the shell from tube.";
            var seam = course.Shell.IsPlain ? "shell's long seam" : $"long seam of the {course.Name}";
            yield return new Fault(FaultCodes.PortOverSeam, $"{holes[i].Port.Path}.at",
                $"'{holes[i].Port.Name}' stands over the {seam}.",
                $"seam at {shown.Angle(course.SeamAngle)}",
                $"outside {shown.Angle(taken[i].Start)} to {shown.Angle(taken[i].End)}", remedy);
        }
    }

    /// <summary>The middle of the widest stretch without a port, to a whole degree where that is free too.</summary>
    private static double? FreeAngle(IReadOnlyList<Interval> taken)
    {
        var ordered = taken
            .Select(t => new Interval(Turns.From(t.Start, 0), Turns.From(t.Start, 0) + t.End - t.Start))
            .OrderBy(t => t.Start)
            .ToList();
        var (start, width) = (0.0, 0.0);
        // A port that runs past a whole turn reaches into its beginning.
        var reached = ordered.Max(t => t.End) - Turns.Full;
        foreach (var next in ordered.Append(new Interval(ordered[0].Start + Turns.Full, ordered[0].End + Turns.Full)))
        {
            if (next.Start - reached > width)
                (start, width) = (reached, next.Start - reached);
            reached = Math.Max(reached, next.End);
        }

        if (width <= 0)
            return null;
        var middle = start + (width / 2);
        var whole = Math.Round(Turns.ToDegrees(middle)) * Math.PI / 180;
        return Turns.From(whole > start && whole < start + width ? whole : middle, 0);
    }
}
