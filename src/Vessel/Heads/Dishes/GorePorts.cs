using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Heads.Dishes;

/// <summary>Which piece of a head of gores a port stands in: the polar cap, or one of the gores.</summary>
internal static class GorePorts
{
    /// <summary>Whether its axis meets the polar cap; false for a head that is not of gores, or where a size is at fault.</summary>
    public static bool IsInCap(PortDesign port, VesselDesign design) =>
        design.Head(port.Host) is DishedHead { Gores: { } gores } && HeadShape.Of(port.Host, design) is { } shape
            && IsInCap(port, gores, shape);

    public static bool IsInCap(PortDesign port, GoreDesign gores, HeadShape shape) =>
        HeadFooting.Of(shape, port) is { } footing && OnMiddle(shape.Middle, footing.Axis.Origin) < gores.CapDiameter / 2;

    /// <summary>
    /// Distance from the axis, on the middle of the wall, of what lies square across it at a place of the head's own frame; mm.
    /// </summary>
    public static double OnMiddle(Profile middle, Vector3 at) => middle.Nearest(new(double.Hypot(at.X, at.Y), at.Z)).At.U;
}
