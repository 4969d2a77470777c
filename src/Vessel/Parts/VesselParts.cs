using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Ports;

namespace Vessel.Parts;

/// <summary>All parts of a vessel: shell, heads, ports and members, each kind in the order of the file.</summary>
internal static class VesselParts
{
    public static ImmutableArray<Part> Of(
        VesselDesign vessel, ImmutableArray<PortSite> sites, ImmutableArray<Head> heads, Welds welds, ImmutableArray<Member> members) =>
    [
        .. ShellPart.Build(vessel, sites, welds),
        .. heads.SelectMany(head => head.Parts(welds)),
        .. sites.SelectMany(site => PortPart.Build(site, welds)),
        .. members.SelectMany(member => member.Parts(welds)),
    ];
}
