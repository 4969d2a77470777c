using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// The inner end of a port's tube, as distance along its axis by the angle phi round it; mm in the port's frame.
/// </summary>
/// <param name="Outer">On the tube's outside.</param>
/// <param name="OuterSlope">d Outer / d phi.</param>
/// <param name="Inner">On the tube's bore.</param>
/// <param name="Ground">The end face follows the host through the wall, not just along its two edges.</param>
/// <param name="Breaks">Where the slope may jump.</param>
public sealed record TubeEnd(
    Func<double, double> Outer,
    Func<double, double> OuterSlope,
    Func<double, double> Inner,
    bool Ground,
    ImmutableArray<double> Breaks)
{
    /// <summary>Whether the end is plain: square to the axis.</summary>
    public bool IsPlain { get; private init; }

    public static TubeEnd Of(PortSite site)
    {
        var (port, host) = (site.Port, site.Outside);
        if (port.Joint == PortJoint.SetIn)
            return Plain(site.InnerEnd);
        if (host is PlaneFootprint plane)
            return Plain(plane.Level);
        var (bore, outside) = (port.BoreRadius, port.OuterRadius);
        if (port.Host != PortHost.Shell && port.Place.Radius == 0)
            return Coaxial(port, host);
        if (port.Cut != EndCut.Square)
        {
            return new(
                phi => host.Reach(outside, phi), phi => host.ReachSlope(outside, phi), phi => host.Reach(bore, phi), true, Corners(host, outside));
        }

        // Cut square through the wall, both edges lie where the wall as a whole first touches; the governing radius
        // may jump from one face to the other at the sides that face along the host's axis.
        double Governing(double phi) => host.GoverningRadius(bore, outside, phi);
        double Cut(double phi) => host.Reach(Governing(phi), phi);
        return new(Cut, phi => host.ReachSlope(Governing(phi), phi), Cut, false, [.. host.Breaks(outside).Append(Math.PI).Order()]);
    }

    private static ImmutableArray<double> Corners(Footprint host, double radius) =>
        host is CylinderFootprint cylinder ? cylinder.Corners(radius) : host.Breaks(radius);

    /// <summary>At the pole of a head both edges are level circles.</summary>
    private static TubeEnd Coaxial(PortDesign port, Footprint host)
    {
        var isGround = port.Cut != EndCut.Square;
        var (bore, outside) = (port.BoreRadius, port.OuterRadius);
        var outer = host.Reach(isGround ? outside : host.GoverningRadius(bore, outside, 0), 0);
        var inner = isGround ? host.Reach(bore, 0) : outer;
        return new(_ => outer, _ => 0, _ => inner, isGround, []);
    }

    private static TubeEnd Plain(double level) => new(_ => level, _ => 0, _ => level, false, []) { IsPlain = true };
}
