using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>
/// An end of a tube, as distance along its axis by the angle phi round it; mm in the piece's frame.
/// </summary>
/// <param name="Outer">Outline on the tube's outside.</param>
/// <param name="OuterSlope">d Outer / d phi.</param>
/// <param name="Inner">Outline on the tube's bore.</param>
/// <param name="Through">Distance by (r, phi) where the end face follows the host through the wall; null where it is straight from the one
/// edge to the other.</param>
/// <param name="Breaks">Where the slope may jump.</param>
public sealed record TubeEnd(
    Func<double, double> Outer,
    Func<double, double> OuterSlope,
    Func<double, double> Inner,
    Func<double, double, double>? Through,
    ImmutableArray<double> Breaks)
{
    /// <summary>Whether the end is plain: square to the axis.</summary>
    public bool IsPlain { get; private init; }

    /// <summary>The end of a port's tube that meets the vessel.</summary>
    public static TubeEnd Of(PortSite site)
    {
        var (port, host) = (site.Port, site.Outside);
        if (port.Joint == PortJoint.SetIn)
            return port.IsFlush ? Following(port, site.Inside) : Plain(site.InnerEnd);
        if (port.Cut != EndCut.Square || host is PlaneFootprint)
            return Following(port, host);
        var (bore, outside) = (port.BoreRadius, port.OuterRadius);
        if (IsCoaxial(port))
        {
            var level = host.Reach(host.GoverningRadius(bore, outside, 0), 0);
            return new(_ => level, _ => 0, _ => level, null, []);
        }

        // Cut square through the wall, both edges lie where the wall as a whole first touches; the governing radius
        // may jump from one face to the other at the sides that face along the host's axis.
        double Governing(double phi) => host.GoverningRadius(bore, outside, phi);
        double Cut(double phi) => host.Reach(Governing(phi), phi);
        return new(Cut, phi => host.ReachSlope(Governing(phi), phi), Cut, null, [.. host.Breaks(outside).Append(Math.PI).Order()]);
    }

    /// <summary>Along a surface through the whole wall; at the pole of a head both edges are level circles.</summary>
    private static TubeEnd Following(PortDesign port, Footprint host)
    {
        var (bore, outside) = (port.BoreRadius, port.OuterRadius);
        if (host is PlaneFootprint plane)
            return Plain(plane.Level);
        if (IsCoaxial(port))
        {
            var (outer, inner) = (host.Reach(outside, 0), host.Reach(bore, 0));
            return new(_ => outer, _ => 0, _ => inner, host.Reach, []);
        }

        return new(
            phi => host.Reach(outside, phi), phi => host.ReachSlope(outside, phi), phi => host.Reach(bore, phi), host.Reach,
            Corners(host, outside));
    }

    private static bool IsCoaxial(PortDesign port) => port.Host != PortHost.Shell && port.Place.Radius == 0;

    private static ImmutableArray<double> Corners(Footprint host, double radius) =>
        host is CylinderFootprint cylinder ? cylinder.Corners(radius) : host.Breaks(radius);

    public static TubeEnd Plain(double level) => new(_ => level, _ => 0, _ => level, null, []) { IsPlain = true };

    /// <summary>
    /// A mitred end. Its plane holds the axis at a level and leans so that the tube is shortest at the bend's inside; cut square
    /// through the wall, the edge that the plane meets first governs.
    /// </summary>
    /// <param name="level">Where the plane meets the axis, mm.</param>
    /// <param name="inside">Angle round the piece of the bend's inside.</param>
    /// <param name="isUpper">Whether the piece lies below the plane.</param>
    public static TubeEnd Mitre(PortDesign port, ElbowDesign elbow, double level, double inside, bool isUpper)
    {
        var (bore, outside, slope) = (port.BoreRadius, port.OuterRadius, isUpper ? -elbow.Slope : elbow.Slope);
        double Along(double r, double phi) => level + (slope * r * Math.Cos(phi - inside));
        double Steep(double r, double phi) => -slope * r * Math.Sin(phi - inside);
        if (elbow.Cut == MitreCut.Sawn)
            return new(phi => Along(outside, phi), phi => Steep(outside, phi), phi => Along(bore, phi), null, []);
        double Governing(double phi) => Math.Cos(phi - inside) > 0 ? outside : bore;
        double Cut(double phi) => Along(Governing(phi), phi);
        return new(Cut, phi => Steep(Governing(phi), phi), Cut, null,
            [.. new[] { inside - (Math.PI / 2), inside + (Math.PI / 2) }.Select(phi => Turns.From(phi, 0)).Where(phi => phi > 0).Order()]);
    }
}
