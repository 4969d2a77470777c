using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Ports;

/// <summary>How a set-in tube's square inner end lies to the faces of its host all round.</summary>
internal static class FreeLength
{
    /// <summary>Round the tube; the least of a smooth curve is met to about 1e-5 of the tube's radius, a small share of any wall.</summary>
    private const int Lines = 720;

    /// <summary>
    /// From the square inner end to the lowest place, along the tube, of the curve in which its outside goes through the host's inner face;
    /// mm. Zero for a tube that does not pass in or ends flush, not a number where a size is at fault.
    /// </summary>
    public static double Of(VesselDesign design, PortDesign port) =>
        port.Joint == PortJoint.SetOn || port.IsFlush ? 0 : port.InsideLength - ToComeThrough(design, port);

    /// <summary>
    /// The inside length with which a square end is level with the inner face where that lies deepest round the tube, and inside it
    /// everywhere else; mm. Not a number where a size is at fault.
    /// </summary>
    public static double ToComeThrough(VesselDesign design, PortDesign port) =>
        IsInPlate(design, port) ? 0
            : Faces(design, port) is not var (_, inside, at) || !inside.Takes(port.OuterRadius) ? double.NaN
            : inside.Reach(at, 0) - Round(port).Min(phi => inside.Reach(port.OuterRadius, phi));

    /// <summary>
    /// How far the square inner end stays outside its host at the worst place, where nothing would close the hole beside it; mm along the
    /// tube, below zero for an end that lies in the wall or inside. Not a number where a size is at fault.
    /// </summary>
    public static double LeftOutside(VesselDesign design, PortDesign port) =>
        IsInPlate(design, port) ? -design.Head(port.Host).Wall - port.InsideLength
            : Faces(design, port) is not var (outside, inside, at) || !outside.Takes(port.OuterRadius) ? double.NaN
            : inside.Reach(at, 0) - port.InsideLength - Round(port).Min(phi => outside.Reach(port.OuterRadius, phi));

    private static IEnumerable<double> Round(PortDesign port) =>
        port is { Host: not PortHost.Shell, Place.Radius: 0 } ? [0] : Enumerable.Range(0, Lines).Select(i => Turns.Full * i / Lines);

    private static bool IsInPlate(VesselDesign design, PortDesign port) =>
        port.Host != PortHost.Shell && design.Head(port.Host).Plate is not null;

    /// <summary>The host's faces, and the distance from the axis at which the inside length is counted.</summary>
    private static (Footprint Outside, Footprint Inside, double At)? Faces(VesselDesign design, PortDesign port)
    {
        if (port.Host == PortHost.Shell)
            return ShellHole.Of(design.Shell, port) is not null && ShellFooting.Of(design, port) is var foot
                ? (foot.Outside, foot.Inside, 0) : null;
        return HeadShape.Of(port.Host, design) is { } shape && HeadFooting.Of(shape, port) is { } footing
            ? (footing.Outside, footing.Inside, footing.AxisRadius) : null;
    }
}
