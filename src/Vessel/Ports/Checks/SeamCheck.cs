using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Ports;

/// <summary>Ports over a long seam of a rolled shell.</summary>
internal static class SeamCheck
{
    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var (shown, shell) = (new UnitFormat(sites.Design.Units), sites.Design.Shell);
        // Where the sheets themselves are at fault, their seams say nothing of ports.
        return shell.Courses.Where(course => course.IsRolled && SheetCheck.Narrow(shown, course) is null).SelectMany(course =>
            Find(shown, course, [.. sites.Openings.Where(hole => shell.IsPlain || hole.Site.OnShell!.Course == course)]));
    }

    private static IEnumerable<Fault> Find(UnitFormat shown, ShellCourse course, List<ShellOpening> holes)
    {
        // The gap is a length on the neutral line of the flat.
        var (half, seams) = (course.RootGap / 2 / (Math.Min(course.Low, course.High) - (course.Wall / 2)), course.Seams);
        if (!double.IsFinite(seams.First + half))
            yield break;
        var key = course.SeamPath[(course.SeamPath.LastIndexOf('.') + 1)..];
        var taken = holes.Select(h => new Interval(h.Angles.Start - half, h.Angles.End + half)).ToList();
        for (var i = 0; i < holes.Count; i++)
        {
            var hole = taken[i];
            if (seams.Angles.Where(seam => Turns.From(seam, hole.Start) <= hole.End).Select(seam => (double?)Turns.From(seam, 0))
                .FirstOrDefault() is not { } over)
                continue;
            var several = seams.Count > 1;
            var remedy = FreeAngle(taken, seams.Pitch) is { } free
                ? $"Turn the seam{(several ? "s" : "")}: '{key}: {shown.Angle(free)}' is clear of every port."
                : several ? "Ports take up the whole circumference between them: use fewer sheets, or fewer or smaller ports."
                : "Ports take up the whole circumference: use fewer or smaller ones, or make the shell from tube.";
            var seam = course.Shell.IsPlain ? (several ? "a long seam of the shell" : "the shell's long seam")
                : $"{(several ? "a" : "the")} long seam of the {course.Name}";
            yield return new Fault(FaultCodes.PortOverSeam, $"{holes[i].Port.Path}.at",
                $"'{holes[i].Port.Name}' stands over {seam}.",
                $"seam at {shown.Angle(over)}",
                $"outside {shown.AngleDown(hole.Start)} to {shown.AngleUp(hole.End)}", remedy);
        }
    }

    /// <summary>The middle of the widest stretch without a port, to a whole degree where that is free too.</summary>
    /// <param name="pitch">Angle from seam to seam: all of them turn together, so that a port stands in the way once in each.</param>
    private static double? FreeAngle(IReadOnlyList<Interval> taken, double pitch)
    {
        double Folded(double angle) => Turns.From(angle, 0) % pitch;
        var ordered = taken
            .Select(t => new Interval(Folded(t.Start), Folded(t.Start) + t.End - t.Start))
            .OrderBy(t => t.Start)
            .ToList();
        var (start, width) = (0.0, 0.0);
        // A port that runs past the last seam reaches in behind the first.
        var reached = ordered.Max(t => t.End) - pitch;
        foreach (var next in ordered.Append(new Interval(ordered[0].Start + pitch, ordered[0].End + pitch)))
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
