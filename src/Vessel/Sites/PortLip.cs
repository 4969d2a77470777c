using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Sites;

/// <summary>How a port's bore and its host's hole fit together.</summary>
public static class PortLip
{
    private const int Stations = 720;

    /// <summary>
    /// How far the host's hole wall stands into the bore of a set-on port at most, mm. A rolled shell's hole is taken on
    /// its outer face and has radial walls, so that its lower edge stands in; so does a cone's tip, cut square to the sheet; one
    /// drilled along the axis, as over a head's seam, or a plate's, is the bore itself: zero.
    /// </summary>
    /// <remarks>
    /// Along a radial line of the hole's wall the distance from the port's axis is that from a line seen along it: least
    /// at the foot of a perpendicular, held to the wall. To 1e-5 of the bore between the stations. Derived here.
    /// </remarks>
    public static double Of(PortSite site, VesselDesign vessel)
    {
        var port = site.Port;
        if (port is { Host: not PortHost.Shell, Joint: PortJoint.SetOn, Place.Radius: 0 })
            return vessel.Head(port).TipEdge;
        if (port.Host != PortHost.Shell || site.Over is not null || port.Joint != PortJoint.SetOn
            || vessel.Shell.CourseAt(port.Place.Height) is { IsRolled: false } or { IsCone: true })
            return 0;
        var shell = vessel.Shell.At(port.Place.Height);
        return Enumerable.Range(0, Stations).Max(i => port.BoreRadius - Nearest(site, shell, Turns.Full * i / Stations));
    }

    /// <summary>Least distance from the port's axis on the hole's wall below a place of its outline.</summary>
    private static double Nearest(PortSite site, ShellSection shell, double phi)
    {
        var edge = site.Outside.At(site.Port.BoreRadius, phi);
        var outer = site.Frame.ToOuter(edge);
        var inward = (shell.InnerRadius / shell.OuterRadius) - 1;
        var inner = site.Frame.ToLocal(outer + new Vector3(inward * outer.X, inward * outer.Y, 0));
        return new Vector3(0, 0, 0).DistanceToSegment(edge with { Z = 0 }, inner with { Z = 0 });
    }
}
