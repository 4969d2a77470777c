using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Joints;

/// <summary>All welds of a vessel, in the order of their numbers.</summary>
public static class VesselJoints
{
    internal static Welds Of(
        VesselDesign vessel, Chamber chamber, ImmutableArray<PortSite> sites, ImmutableArray<Member> members) => new(
    [
        .. chamber.Joints,
        .. sites.SelectMany(site => MitreSeam.Of(site).Append(PortSeam.Of(site, vessel))),
        .. members.SelectMany(member => member.Joints),
    ]);
}
