using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Whether a port is long enough outside, and not too long inside.</summary>
internal static class BranchReachCheck
{
    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var shown = new UnitFormat(sites.Design.Units);
        foreach (var stand in sites.All)
        {
            var port = stand.Port;
            // The short side of the first mitre keeps a bead's width off the weld round the port.
            var bend = port.Elbow is null or { IsTooSharp: true } ? 0 : port.Length - port.WholeLength + port.Wall;
            if (OutsideNeed(stand) + bend is var need && port.Length <= need)
            {
                // A bung's own length includes what lies in the wall and inside.
                yield return new Fault(FaultCodes.PortTooShort,
                    port.Thread is null ? $"{port.Path}.length" : $"{port.Path}.bung.length",
                    $"The {(port.Elbow is null ? "free end" : "elbow")} of '{port.Name}' does not clear the outside of its host.",
                    shown.Length(port.Length), $"more than {shown.LengthUp(need)}",
                    $"Make it longer by more than {shown.LengthUp(need - port.Length)}.");
            }

            if (port.InnerHeight is { } height && stand.Site is { } standing && !(standing.ToHeight(height) >= 0))
            {
                var (inside, away) = (standing.Inward.Origin.Z, double.IsNaN(standing.ToHeight(height)));
                yield return new Fault(FaultCodes.InnerHeightMissed, $"{port.Path}.inner_height",
                    $"The axis of '{port.Name}' {(away ? "is level" : "leads away from that height")}: its inner end cannot stand there.",
                    shown.Length(height),
                    away ? null : standing.Inward.Z.Z < 0 ? $"at most {shown.LengthDown(inside)}" : $"at least {shown.LengthUp(inside)}",
                    away ? "Give its 'inside_length' instead, or a tilt." : "Give a height that lies further in.");
                continue;
            }

            if (port is { IsFlush: true, InsideLength: > 0 })
            {
                yield return new Fault(FaultCodes.FlushEndInside, port.DepthKey,
                    $"The inner end of '{port.Name}' is flush, yet is to reach in.", shown.Length(port.InsideLength), shown.Length(0),
                    "Delete 'inside_length', or use 'inner_end: square'.");
            }

            if (stand.Site is { } site && LeftOutside(shown, site) is { } outside)
                yield return outside;

            if (InsideReach.Of(sites, stand) is var room && port.InsideLength > 0 && port.InsideLength >= room)
            {
                yield return new Fault(FaultCodes.PortTooDeep, port.DepthKey,
                    $"The inner end of '{port.Name}' meets the far side of the vessel.",
                    shown.Length(port.InsideLength), $"less than {shown.LengthDown(room)}",
                    "Make its inside length smaller, or use 'inner_end: flush'.");
            }
        }
    }

    /// <summary>A square end must close the hole beside it all round.</summary>
    private static Fault? LeftOutside(UnitFormat shown, PortSite site) =>
        site.Port is { Joint: PortJoint.SetIn, IsFlush: false } port && site.LeftOutside is var left && left >= 0
            ? new(FaultCodes.EndOutsideHost, port.DepthKey,
                $"The inner end of '{port.Name}' is square and stays outside its host for part of the way round: the hole is open there, "
                    + $"by up to {shown.LengthDown(left)} along the tube.",
                shown.Length(port.InsideLength), $"more than {shown.LengthUp(port.InsideLength + left)}",
                site.ToComeThrough is var through && double.IsFinite(through)
                    ? $"Delete 'inside_length', which then is {shown.Length(through)} so that the end comes through all round, or use "
                        + "'inner_end: flush' without it."
                    : "Use a narrower port, or one that stands nearer to the middle: part of it misses the inside of its host.")
            : null;

    /// <summary>How far out the foot of a port reaches along it; not a number where it does not meet its host all round.</summary>
    private static double OutsideNeed(PortStand stand) => stand.Site is not { } site ? stand.Port.Host == PortHost.Shell ? double.NaN : 0
        : site.Outside.Takes(site.Port.OuterRadius) ? Math.Max(0, site.Outside.Reaches(site.Port.OuterRadius).End)
        : double.NaN;
}
