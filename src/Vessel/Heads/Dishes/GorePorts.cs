using Vessel.Design;

namespace Vessel.Heads.Dishes;

/// <summary>Which piece of a head of gores a port stands in: the polar cap, or one of the gores.</summary>
internal static class GorePorts
{
    /// <summary>Whether its axis meets the polar cap; false for a head that is not of gores, or where a size is at fault.</summary>
    public static bool IsInCap(PortDesign port, VesselDesign design) =>
        design.Head(port) is DishedHead { Gores: { } gores } && HeadShape.Of(port.End!.Value, design) is { } shape
            && gores.IsInCap(port, shape);

    public static bool IsInCap(this GoreDesign gores, PortDesign port, HeadShape shape) =>
        shape.OnMiddle(port.Place.Radius) < gores.CapDiameter / 2;
}
