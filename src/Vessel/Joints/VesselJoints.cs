using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Joints;

/// <summary>All welds of a vessel, in the order of their numbers.</summary>
public static class VesselJoints
{
    internal static Welds Of(
        VesselDesign vessel, ImmutableArray<PortSite> sites, ImmutableArray<Head> heads, ImmutableArray<Member> members) => new(
    [
        .. LongSeam.All(vessel),
        .. GirthSeam.Of(vessel),
        .. heads.SelectMany(head => head.Joints),
        .. sites.SelectMany(site => MitreSeam.Of(site).Append(PortSeam.Of(site, vessel))),
        .. members.SelectMany(member => member.Joints),
    ]);
}
