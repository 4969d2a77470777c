using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Whether the holes of the shell keep clear of its ends and of inset heads.</summary>
internal static class ShellEndCheck
{
    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var design = sites.Design;
        var (shown, shell) = (new UnitFormat(design.Units), design.Shell);
        foreach (var hole in sites.Openings)
        {
            var lower = new End(hole.Port, "lower", "bottom",
                hole.HoleHeights.Start, hole.FootHeights.Start, design.Bottom.Depth, 1);
            var upper = new End(hole.Port, "upper", "top",
                shell.Height - hole.HoleHeights.End, shell.Height - hole.FootHeights.End, design.Top.Depth, -1);
            var over = hole.Site.Over;
            if (AcrossGirth(shown, shell, hole) is { } across)
                yield return across;
            if (OverHead(hole.Site) is { } fault)
                yield return fault;
            foreach (var (end, host) in new[] { (lower, VesselEnd.Bottom), (upper, VesselEnd.Top) })
            {
                if (host != over && end.Find(shown, shell.Wall) is { } near)
                    yield return OverProposal(sites, hole.Port, host) is { } height
                        ? near with { Remedy = $"{near.Remedy} Or {(host == VesselEnd.Bottom ? $"at most {shown.LengthDown(height - Hair)}" : $"at least {shown.LengthUp(height + Hair)}")}, to stand over the seam of the {end.Head}." }
                        : near;
            }
        }
    }

    /// <summary>Distance past the very edge of what stands over a seam, where a port stands over it too, mm.</summary>
    private const double Hair = 1e-3;

    /// <summary>The height nearest to the port's own at which it stands over the head's seam; null where none does.</summary>
    private static double? OverProposal(PortSites sites, PortDesign port, VesselEnd head)
    {
        const int tries = 48, halvings = 30;
        bool IsOver(double height) => sites.Stand(port with { Place = port.Place with { Height = height } }).Site is { } moved
            && moved.Over == head && OverHead(moved) is null;
        var (from, edge) = (port.Place.Height, head == VesselEnd.Bottom ? 0 : sites.Design.Shell.Height);
        double Try(int i) => from + (i * (edge - from) / tries);
        if (Enumerable.Range(1, tries).FirstOrDefault(i => IsOver(Try(i))) is not (> 0 and var first))
            return null;
        var (over, off) = (Try(first), Try(first - 1));
        for (var i = 0; i < halvings; i++)
        {
            var middle = (over + off) / 2;
            (over, off) = IsOver(middle) ? (middle, off) : (over, middle);
        }

        return over;
    }

    /// <summary>Every line of a port over a head's seam, and of its hole, must meet shell or head.</summary>
    private static Fault? OverHead(PortSite site)
    {
        var port = site.Port;
        return site.Over is not { } head || (site.Outside.Takes(port.OuterRadius) && site.Inside.Takes(port.HoleRadius)) ? null
            : new(FaultCodes.PortOffShell, $"{port.Path}.at.height",
                $"'{port.Name}' reaches past the {Names.Of(head)} head beyond the shell's edge.",
                null, null, "Move it away from the head, or make it smaller.");
    }

    /// <summary>A wall of metal is left between a hole and the seam where two courses meet, and a port stands on one of them.</summary>
    private static Fault? AcrossGirth(UnitFormat shown, ShellDesign shell, ShellOpening hole)
    {
        if (shell.IsPlain)
            return null;
        var course = hole.Site.OnShell!.Course;
        var down = course.Start == 0 ? double.PositiveInfinity
            : Math.Min(hole.HoleHeights.Start - course.Start - shell.Wall, hole.FootHeights.Start - course.Start);
        var up = course.End == shell.Height ? double.PositiveInfinity
            : Math.Min(course.End - hole.HoleHeights.End - shell.Wall, course.End - hole.FootHeights.End);
        if (!(Math.Min(down, up) < -Ring.Hair))
            return null;
        var (low, high) = (hole.Port.Place.Height - down, hole.Port.Place.Height + up);
        var remedy = down + up < 0 ? $"Use a smaller port, or make the {course.Name} longer."
            : double.IsInfinity(down) ? $"Use a height of at most {shown.LengthDown(high)}, or above the {course.Name}."
            : double.IsInfinity(up) ? $"Use a height of at least {shown.LengthUp(low)}, or below the {course.Name}."
            : $"Use a height of about {shown.LengthUp(low)} to {shown.LengthDown(high)}, or another part of the shell.";
        return new(FaultCodes.PortAcrossGirth, $"{hole.Port.Path}.at.height",
            $"'{hole.Port.Name}' stands over the seam round the shell at {shown.Length(down < up ? course.Start : course.End)}, or its "
                + "hole leaves less than a wall to it.",
            shown.Length(Math.Min(down, up)), "at least 0", remedy);
    }

    /// <summary>One end of the shell as a hole sees it: distances inward from that edge, mm.</summary>
    /// <param name="Inward">Sign of the height's change that leads away from the edge.</param>
    private sealed record End(
        PortDesign Port, string Edge, string Head, double ToHole, double ToFoot, double Depth, int Inward)
    {
        /// <summary>Fault of the shell's end, at most one: the one whose cure also cures the others, where that can be.</summary>
        public Fault? Find(UnitFormat shown, double wall)
        {
            if (Depth > 0 && ToHole < Depth - Ring.Hair)
            {
                return Move(FaultCodes.HoleBehindLid,
                    $"The inset {Head} head covers the hole of '{Port.Name}' in the shell",
                    ToHole, Math.Max(Depth, wall));
            }

            if (ToHole < wall - Ring.Hair)
            {
                return Move(FaultCodes.HoleNearShellEnd,
                    $"Less than one wall of metal is left between the hole of '{Port.Name}' and the {Edge} edge",
                    ToHole, wall);
            }

            return ToFoot < -Ring.Hair
                ? Move(FaultCodes.PortOffShell, $"'{Port.Name}' reaches over the shell's {Edge} edge", ToFoot, 0)
                : null;

            Fault Move(string code, string what, double left, double limit)
            {
                var height = Port.Place.Height + (Inward * (limit - left));
                return new Fault(code, $"{Port.Path}.at.height", $"{what}.", $"{shown.Length(left)} from the edge",
                    $"at least {shown.LengthUp(limit)}",
                    $"Use a height of at {(Inward > 0 ? $"least {shown.LengthUp(height)}" : $"most {shown.LengthDown(height)}")}.");
            }
        }
    }
}
