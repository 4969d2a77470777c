using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Joints;

/// <summary>All welds of a vessel, in the order of their numbers.</summary>
public static class VesselJoints
{
    internal static Welds Of(VesselDesign vessel, ImmutableArray<PortSite> sites, ImmutableArray<Member> members) => new(
    [
        .. LongSeam.All(vessel),
        .. GirthSeam.Of(vessel),
        .. GoreSeams.Of(PortHost.Top, vessel),
        .. ConeSeam.Of(PortHost.Top, vessel),
        HeadJoint.Of(PortHost.Top, vessel),
        .. GoreSeams.Of(PortHost.Bottom, vessel),
        .. ConeSeam.Of(PortHost.Bottom, vessel),
        HeadJoint.Of(PortHost.Bottom, vessel),
        .. sites.SelectMany(site => MitreSeam.Of(site).Append(PortSeam.Of(site, vessel))),
        .. members.SelectMany(member => member.Joints),
    ]);
}
