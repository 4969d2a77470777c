using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>How much of a set-in tube stands free inside all round.</summary>
internal static class FreeLength
{
    /// <summary>Round the tube; the least of a smooth curve is met to about 1e-5 of the tube's radius, a small share of any wall.</summary>
    private const int Lines = 720;

    /// <summary>
    /// From the square inner end to the lowest place, along the tube, of the curve in which its outside goes through the host's inner face;
    /// mm. Zero for a tube that does not pass in or ends flush, not a number where a size is at fault.
    /// </summary>
    public static double Of(VesselDesign design, PortDesign port)
    {
        if (port.Joint == PortJoint.SetOn || port.IsFlush)
            return 0;
        if (port.Host != PortHost.Shell && design.Head(port.Host) is FlatHead)
            return port.InsideLength;
        if (Face(design, port) is not var (face, at) || !face.Takes(port.OuterRadius))
            return double.NaN;
        var deepest = Enumerable.Range(0, Lines).Min(i => face.Reach(port.OuterRadius, Turns.Full * i / Lines));
        return port.InsideLength + deepest - face.Reach(at, 0);
    }

    /// <summary>The host's inner face, and the distance from the axis at which the inside length is counted.</summary>
    private static (Footprint Face, double At)? Face(VesselDesign design, PortDesign port)
    {
        if (port.Host == PortHost.Shell)
            return ShellHole.Of(design.Shell, port) is null ? null : (ShellFooting.Of(design, port).Inside, 0);
        return HeadShape.Of(port.Host, design) is { } shape && HeadFooting.Of(shape, port) is { } footing ? (footing.Inside, footing.AxisRadius) : null;
    }
}
