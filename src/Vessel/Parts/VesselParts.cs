using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>All parts of a vessel: shell, heads, ports, internals, brackets and straps, each kind in the order of the file.</summary>
public static class VesselParts
{
    public static ImmutableArray<Part> Of(VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds) =>
    [
        .. ShellPart.Build(vessel, sites, welds),
        .. Head(PortHost.Top, vessel, sites, welds),
        .. Head(PortHost.Bottom, vessel, sites, welds),
        .. sites.SelectMany(site => PortPart.Build(site, welds)),
        .. Inside(vessel, welds),
        .. vessel.Brackets.Select(bracket => BracketPart.Build(bracket, vessel, welds)),
    ];

    /// <summary>Sleeves, caps and discs.</summary>
    public static ImmutableArray<Part> Inside(VesselDesign vessel, WeldNumbers welds) =>
    [
        .. vessel.Inside.Sleeves.Select(sleeve => SleevePart.Build(sleeve, vessel, welds)),
        .. vessel.Inside.Caps.SelectMany(cap => CapParts.Build(cap, vessel, welds)),
        .. vessel.Inside.Discs.Select(disc => DiscPart.Build(disc, welds)),
    ];

    private static ImmutableArray<Part> Head(PortHost end, VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds) =>
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
