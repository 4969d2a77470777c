using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Ports;

namespace Vessel.Parts;

/// <summary>All parts of a vessel: walls, ports and members, each kind in the order of the file.</summary>
internal static class VesselParts
{
    public static ImmutableArray<Part> Of(
        Chamber chamber, ImmutableArray<PortSite> sites, Welds welds, ImmutableArray<Member> members) =>
    [
        .. chamber.Walls.SelectMany(wall => wall.Parts(welds)),
        .. sites.SelectMany(site => PortPart.Build(site, welds)),
        .. members.SelectMany(member => member.Parts(welds)),
    ];
}
