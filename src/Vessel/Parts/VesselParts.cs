using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Ports;

namespace Vessel.Parts;

/// <summary>All parts of a vessel: shell, heads, ports and members, each kind in the order of the file.</summary>
internal static class VesselParts
{
    public static ImmutableArray<Part> Of(VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds, ImmutableArray<Member> members) =>
    [
        .. ShellPart.Build(vessel, sites, welds),
        .. Head(PortHost.Top, vessel, sites, welds),
        .. Head(PortHost.Bottom, vessel, sites, welds),
        .. sites.SelectMany(site => PortPart.Build(site, welds)),
        .. members.SelectMany(member => member.Parts(welds)),
    ];

    private static ImmutableArray<Part> Head(PortHost end, VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds) =>
        vessel.Head(end) switch
        {
            FlatHead lid => [LidPart.Build(end, lid, vessel, sites, welds)],
            DishedHead { Gores: not null } when GoreShape.Of(end, vessel) is { } shape =>
            [
                .. GorePart.Build(end, shape, vessel, sites, welds),
                PolarCapPart.Build(end, shape, [.. sites.Where(site => GorePorts.IsInCap(site.Port, vessel))], welds),
            ],
            DishedHead dish => [SpunHeadPart.Build(end, dish, vessel, sites, welds)],
            ConeHead cone => [.. ConePart.Build(end, cone, vessel, sites, welds)],
            var other => throw new ArgumentOutOfRangeException(nameof(vessel), other, "a head without a part"),
        };
}
