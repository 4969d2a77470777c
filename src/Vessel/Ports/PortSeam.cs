using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>The weld round a port on the outside of its host, along the footprint of the port's outside.</summary>
internal static class PortSeam
{
    public static Joint Of(PortSite site, VesselDesign vessel)
    {
        var port = site.Port;
        var wall = Math.Min(port.Wall, site.HostWall);
        var end = TubeEnd.Of(site);
        return new(
            $"{port.Name} to {Names.Of(port.Host)}{(site.Over is { } head ? $" and {Names.Of(head)}" : "")}",
            [Names.PortPart(port, vessel), Slug.Of(port.Name)],
            JointKind.Fillet,
            Interval.Turn,
            port.Joint == PortJoint.SetIn || end.IsPlain ? site.Outside.Breaks(port.OuterRadius) : end.Breaks,
            phi => At(site, end, phi),
            FilletThroat.Of(wall),
            wall,
            port.Path)
        {
            Role = WeldRole.PortSeam,
            Owner = port.Path,
            OwnWall = port.Wall,
            GapKey = port.Joint == PortJoint.SetIn ? $"{port.Path}.clearance" : null,
        };
    }

    private static Station At(PortSite site, TubeEnd end, double phi)
    {
        var (host, frame, radius) = (site.Outside, site.Frame, site.Port.OuterRadius);
        var meeting = host.Meet(radius, phi);
        var (hostNormal, tubeNormal) = (meeting.Normal, Footprint.OnLine(1, phi, 0));
        var slope = new Vector3(-radius * Math.Sin(phi), radius * Math.Cos(phi), meeting.Slope);
        var (axial, normal) = Gaps(site, end, phi, meeting.Reach);
        return new(
            frame.ToOuter(Footprint.OnLine(radius, phi, meeting.Reach)),
            frame.Turn(slope),
            frame.Turn(Leg(tubeNormal, hostNormal, slope)),
            frame.Turn(Leg(hostNormal, tubeNormal, slope)),
            Math.PI - Math.Acos(Math.Clamp(hostNormal.Dot(tubeNormal), -1, 1)),
            normal,
            axial);
    }

    /// <summary>The direction in the plane square to <paramref name="normal"/> that leans towards <paramref name="towards"/>.</summary>
    private static Vector3 Leg(Vector3 towards, Vector3 normal, Vector3 slope)
    {
        var across = towards.Across(normal);
        // Where both surfaces are in line any leg square to the path will do.
        return across.Length > 1e-9 ? across.Unit() : slope.Cross(normal).Unit();
    }

    /// <summary>Set on: between the tube's outer edge and the host. Set in: between tube and hole on the outer face.</summary>
    private static (double Axial, double Normal) Gaps(PortSite site, TubeEnd end, double phi, double reach)
    {
        if (site.Port.Joint == PortJoint.SetIn)
            return (site.Port.Clearance, site.Port.Clearance);
        var along = end.Outer(phi);
        var axial = along - reach;
        return (axial, site.Outside.Distance(Footprint.OnLine(site.Port.OuterRadius, phi, along)));
    }
}
