namespace Vessel.Design;

/// <summary>Whether the holes of the shell keep clear of its ends and of inset heads.</summary>
internal static class ShellEndCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, IEnumerable<ShellHole> holes)
    {
        var shown = new Shown(design.Units);
        var shell = design.Shell;
        foreach (var hole in holes)
        {
            var lower = new End(hole.Port, "lower", "bottom",
                hole.HoleLow, hole.FootLow, LidCheck.Depth(design.Bottom), 1);
            var upper = new End(hole.Port, "upper", "top",
                shell.Height - hole.HoleHigh, shell.Height - hole.FootHigh, LidCheck.Depth(design.Top), -1);
            if (AcrossGirth(shown, shell, hole) is { } across)
                yield return across;
            foreach (var fault in new[] { lower, upper }.Select(end => end.Find(shown, shell.Wall)).OfType<Fault>())
                yield return fault;
        }
    }

    /// <summary>A wall of metal is left between a hole and the seam where two courses meet, and a port stands on one of them.</summary>
    private static Fault? AcrossGirth(Shown shown, ShellDesign shell, ShellHole hole)
    {
        if (shell.IsPlain)
            return null;
        var course = shell.CourseAt(hole.Port.Place.Height);
        var down = course.Start == 0 ? double.PositiveInfinity
            : Math.Min(hole.HoleLow - course.Start - shell.Wall, hole.FootLow - course.Start);
        var up = course.End == shell.Height ? double.PositiveInfinity
            : Math.Min(course.End - hole.HoleHigh - shell.Wall, course.End - hole.FootHigh);
        if (!(Math.Min(down, up) < 0))
            return null;
        var (low, high) = (hole.Port.Place.Height - down, hole.Port.Place.Height + up);
        var remedy = down + up < 0 ? $"Use a smaller port, or make the {course.Name} longer."
            : double.IsInfinity(down) ? $"Use a height of at most {shown.Length(high)}, or above the {course.Name}."
            : double.IsInfinity(up) ? $"Use a height of at least {shown.Length(low)}, or below the {course.Name}."
            : $"Use a height of about {shown.Length(low)} to {shown.Length(high)}, or another part of the shell.";
        return new(FaultCodes.PortAcrossGirth, $"{hole.Port.Path}.at.height",
            $"'{hole.Port.Name}' stands over the seam round the shell at {shown.Length(down < up ? course.Start : course.End)}, or its hole leaves less than a wall to it.",
            shown.Length(Math.Min(down, up)), "at least 0", remedy);
    }

    /// <summary>One end of the shell as a hole sees it: distances inward from that edge, mm.</summary>
    /// <param name="Inward">Sign of the height's change that leads away from the edge.</param>
    private sealed record End(
        PortDesign Port, string Edge, string Head, double ToHole, double ToFoot, double Depth, int Inward)
    {
        /// <summary>At most one fault: the one whose cure also cures the others, where that can be.</summary>
        public Fault? Find(Shown shown, double wall)
        {
            if (ToHole < Depth)
            {
                return Move(FaultCodes.HoleBehindLid,
                    $"The inset {Head} head covers the hole of '{Port.Name}' in the shell",
                    ToHole, Math.Max(Depth, wall));
            }

            if (ToHole < wall)
            {
                return Move(FaultCodes.HoleNearShellEnd,
                    $"Less than one wall of metal is left between the hole of '{Port.Name}' and the {Edge} edge",
                    ToHole, wall);
            }

            return ToFoot < 0
                ? Move(FaultCodes.PortOffShell, $"'{Port.Name}' reaches over the shell's {Edge} edge", ToFoot, 0)
                : null;

            Fault Move(string code, string what, double left, double limit)
            {
                var height = Port.Place.Height + (Inward * (limit - left));
                return new Fault(code, $"{Port.Path}.at.height", $"{what}.", $"{shown.Length(left)} from the edge",
                    $"at least {shown.Length(limit)}",
                    $"Use a height of at {(Inward > 0 ? "least" : "most")} {shown.Length(height)}.");
            }
        }
    }
}
