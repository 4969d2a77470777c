namespace Vessel.Design;

/// <summary>Whether a port is long enough outside, and not too long inside.</summary>
internal static class BranchReachCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        foreach (var port in design.Ports)
        {
            if (OutsideNeed(design, port) is var need && port.Length <= need)
            {
                // A bung's own length includes what lies in the wall and inside.
                yield return new Fault(FaultCodes.PortTooShort,
                    port.Thread is null ? $"{port.Path}.length" : $"{port.Path}.bung.length",
                    $"The free end of '{port.Name}' does not clear the outside of what it stands in.",
                    shown.Length(port.Length), $"more than {shown.Length(need)}",
                    $"Make it longer by more than {shown.Length(need - port.Length)}.");
            }

            if (InsideRoom(design, port) is var room && port.InsideLength > 0 && port.InsideLength >= room)
            {
                yield return new Fault(FaultCodes.PortTooDeep, $"{port.Path}.inside_length",
                    $"The inner end of '{port.Name}' meets the far side of the vessel.",
                    shown.Length(port.InsideLength), $"less than {shown.Length(room)}",
                    "Make its inside length smaller.");
            }
        }
    }

    private static double OutsideNeed(VesselDesign design, PortDesign port)
    {
        if (port.Host != PortHost.Shell)
            return 0;
        return ShellHole.Of(design.Shell, port) is null
            ? double.NaN
            : Math.Max(0, new BranchAxis(design.Shell, port.Place).GreatestReach(port.OuterRadius));
    }

    private static double InsideRoom(VesselDesign design, PortDesign port)
    {
        if (port.Host == PortHost.Shell)
        {
            return ShellHole.Of(design.Shell, port) is null
                ? double.NaN
                : new BranchAxis(design.Shell, port.Place).GreatestInsideLength(port.OuterRadius);
        }

        var (near, far) = port.Host == PortHost.Top ? (design.Top, design.Bottom) : (design.Bottom, design.Top);
        var radius = design.Shell.OuterRadius;
        return design.Shell.Height + Dome(near, radius, port.Place.Radius)
            + Dome(far, radius, port.Place.Radius + port.OuterRadius);
    }

    /// <summary>How far the head's inner face lies beyond the shell's end; negative for an inset plate.</summary>
    private static double Dome(HeadDesign head, double shellRadius, double at) => head is HemisphereHead
        ? BranchAxis.HalfChord(shellRadius - head.Wall, at)
        : -LidCheck.Depth(head);
}
