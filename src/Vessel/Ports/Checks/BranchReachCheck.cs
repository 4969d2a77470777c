using Vessel.Design;
using Vessel.Geometry;
using Vessel.Ports;

namespace Vessel.Ports;

/// <summary>Whether a port is long enough outside, and not too long inside.</summary>
internal static class BranchReachCheck
{
    /// <summary>Round a tube that leans in a head.</summary>
    private const int Lines = 72;

    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        foreach (var port in design.Ports)
        {
            // The short side of the first mitre keeps a bead's width off the weld round the port.
            var bend = port.Elbow is null or { IsTooSharp: true } ? 0 : port.Length - port.WholeLength + port.Wall;
            if (OutsideNeed(design, port) + bend is var need && port.Length <= need)
            {
                // A bung's own length includes what lies in the wall and inside.
                yield return new Fault(FaultCodes.PortTooShort,
                    port.Thread is null ? $"{port.Path}.length" : $"{port.Path}.bung.length",
                    $"The {(port.Elbow is null ? "free end" : "elbow")} of '{port.Name}' does not clear the outside of its host.",
                    shown.Length(port.Length), $"more than {shown.LengthUp(need)}",
                    $"Make it longer by more than {shown.LengthUp(need - port.Length)}.");
            }

            if (port is { IsFlush: true, InsideLength: > 0 })
            {
                yield return new Fault(FaultCodes.FlushEndInside, $"{port.Path}.inside_length",
                    $"The inner end of '{port.Name}' is flush, yet is to reach in.", shown.Length(port.InsideLength), shown.Length(0),
                    "Delete 'inside_length', or use 'inner_end: square'.");
            }

            if (LeftOutside(shown, design, port) is { } outside)
                yield return outside;

            if (InsideRoom(design, port) is var room && port.InsideLength > 0 && port.InsideLength >= room)
            {
                yield return new Fault(FaultCodes.PortTooDeep, $"{port.Path}.inside_length",
                    $"The inner end of '{port.Name}' meets the far side of the vessel.",
                    shown.Length(port.InsideLength), $"less than {shown.LengthDown(room)}",
                    "Make its inside length smaller, or use 'inner_end: flush'.");
            }
        }
    }

    /// <summary>A square end must close the hole beside it all round.</summary>
    private static Fault? LeftOutside(Shown shown, VesselDesign design, PortDesign port) =>
        port.Joint == PortJoint.SetIn && !port.IsFlush && FreeLength.LeftOutside(design, port) is var left && left >= 0
            ? new(FaultCodes.EndOutsideHost, $"{port.Path}.inside_length",
                $"The inner end of '{port.Name}' is square and stays outside its host for part of the way round: the hole is open there, by up to {shown.LengthDown(left)} along the tube.",
                shown.Length(port.InsideLength), $"more than {shown.LengthUp(port.InsideLength + left)}",
                $"Delete 'inside_length', which then is {shown.Length(FreeLength.ToComeThrough(design, port))} so that the end comes through all round, or use 'inner_end: flush' without it.")
            : null;

    private static double OutsideNeed(VesselDesign design, PortDesign port)
    {
        if (port.Host != PortHost.Shell)
        {
            return Footing(design, port) is not { } footing ? 0
                : footing.Outside.Takes(port.OuterRadius)
                    ? Math.Max(0, footing.Round(footing.Outside, port.OuterRadius).Max(at => footing.Axis.ToLocal(at).Z))
                : double.NaN;
        }

        return ShellHole.Of(design.Shell, port) is null ? double.NaN
            : design.Shell.CourseAt(port.Place.Height) is { IsCone: true } || OverSeam.Of(design, port) is not null
                ? ShellFooting.Of(design, port).Outside is var face
                ? Math.Max(0, BranchAxis.Phis().Max(phi => face.Reach(port.OuterRadius, phi))) : 0
            : Math.Max(0, new BranchAxis(design.Shell.At(port.Place.Height), port.Place).GreatestReach(port.OuterRadius));
    }

    private static double InsideRoom(VesselDesign design, PortDesign port)
    {
        if (port.Host == PortHost.Shell)
        {
            return ShellHole.Of(design.Shell, port) is null ? double.NaN
                : port.InsideLength == 0 ? double.PositiveInfinity
                : !design.Shell.IsPlain || OverSeam.Of(design, port) is not null
                    ? Slanted(design, port, ShellFooting.Of(design, port) is var foot ? foot.Axis : default, foot.Inside.Reach(0, 0))
                : new BranchAxis(design.Shell.At(port.Place.Height), port.Place).GreatestInsideLength(port.OuterRadius);
        }

        if (port.InsideLength > 0 && Footing(design, port) is { } footing && port.Place is { SquareToSurface: true, Radius: > 0 })
            return Slanted(design, port, HeadShape.Of(port.Host, design)!.Frame.Place(footing.Axis), footing.Inside.Reach(0, 0));
        return design.Shell.Height + Beyond(design, port.Host, port.Place.Radius)
            + Beyond(design, port.Host == PortHost.Top ? PortHost.Bottom : PortHost.Top, port.Place.Radius + port.OuterRadius);
    }

    private static HeadFooting? Footing(VesselDesign design, PortDesign port) =>
        HeadShape.Of(port.Host, design) is { } shape ? HeadFooting.Of(shape, port) : null;

    /// <summary>How far the head's inner face lies beyond the shell's end; negative for an inset plate.</summary>
    private static double Beyond(VesselDesign design, PortHost end, double radius) =>
        HeadShape.Of(end, design) is { } shape ? shape.DepthAt(radius)
            : design.Head(end).Plate is { } flat ? -flat.Depth
            : double.NaN;

    /// <summary>From where the axis meets the inside to the first of the tube's lines that leaves the room on its far side.</summary>
    private static double Slanted(VesselDesign design, PortDesign port, Frame3 frame, double start)
    {
        var shell = design.Shell;
        var (low, high) = (design.Bottom.Depth, shell.Height - design.Top.Depth);
        if (!(low < high && shell.LeastInner(0, shell.Height) > 0)
            || new[] { PortHost.Top, PortHost.Bottom }.Any(end => HeadShape.Of(end, design) is null && design.Head(end).Plate is null))
        {
            return double.NaN;
        }

        var inside = InsideProfile.Of(design);
        return Enumerable.Range(0, Lines).Min(i =>
        {
            var line = frame.ToOuter(Footprint.OnLine(port.OuterRadius, Turns.Full * i / Lines, start));
            // Where it would come in from the far side it goes out.
            return inside.FirstHit(line, frame.Z) is { } hit ? -hit.Along : double.NaN;
        });
    }
}
