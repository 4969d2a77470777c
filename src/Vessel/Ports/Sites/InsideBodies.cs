using Vessel.Design;

namespace Vessel.Ports;

/// <summary>The rings of which each part inside the vessel is made up.</summary>
internal static class InsideBodies
{
    /// <summary>Members that stand inside.</summary>
    public static IEnumerable<InsideBody> OfInside(VesselDesign design) => design.All<InsideSpec>().Select(spec => spec.Body(design));

    /// <summary>What reaches in from the heads.</summary>
    public static IEnumerable<InsideBody> OfPorts(VesselDesign design) => design.Ports
        .Where(p => p.Host != PortHost.Shell && p.Joint == PortJoint.SetIn && p.InsideLength > 0 && !Leans(design, p))
        .Select(p => OfPort(design, p));

    /// <summary>Whether a port's axis is not the vessel's, nor parallel to it.</summary>
    public static bool Leans(VesselDesign design, PortDesign port) => port.Host == PortHost.Shell
        || (port.Place is { SquareToSurface: true, Radius: > 0 } && design.Head(port.Host).Plate is null);

    private static InsideBody OfPort(VesselDesign design, PortDesign port)
    {
        var (end, inward) = port.Host == PortHost.Top
            ? (InsideRoom.UpperEnd(design), -1)
            : (InsideRoom.LowerEnd(design), 1);
        var from = HeadShape.Of(port.Host, design) is { } shape ? end - (inward * shape.DepthAt(port.Place.Radius)) : end;
        var to = from + (inward * port.InsideLength);
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var aside = port.Place.Radius;
        return aside > 0
            ? new InsideBody(port.Path, port.Name,
                [new Ring(Math.Max(0, aside - port.OuterRadius), aside + port.OuterRadius, low, high)], false)
            : new InsideBody(port.Path, port.Name, [new Ring(port.BoreRadius, port.OuterRadius, low, high)]);
    }
}
