using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>What the design asks for that is bought: fittings, screws, packing.</summary>
internal static class BoughtItems
{
    /// <summary>For M4, mm: the medium fit of ISO 273, from memory.</summary>
    public const double ScrewHole = 4.5;

    private const int ScrewsPerDisc = 3;

    /// <summary>Fittings in the order of the ports, then screws of discs, what straps need, then packings.</summary>
    public static ImmutableArray<BoughtItem> Of(VesselDesign design, ImmutableArray<PortSite> sites, ImmutableArray<Member> members) =>
    [
        .. design.Ports.Where(port => port.Fitting is not null).Select(Fitting),
        .. design.Inside.Discs.Where(disc => disc.Fixed == Fixing.Screws).Select(Screws),
        .. members.SelectMany(member => member.Bought),
        .. design.Inside.Packings.Select(packing => Packing(packing, design, sites)),
    ];

    private static BoughtItem Fitting(PortDesign port) => new(
        $"fitting of {port.Name}", 1, $"{port.Fitting!.Name}, {port.Fitting.Thread}", null, null, port.Path);

    private static BoughtItem Screws(DiscDesign disc) => new(
        $"screws of {disc.Name}",
        ScrewsPerDisc,
        $"M4 screw with nut; {NoteText.Length(ScrewHole)} mm holes at 60, 180 and 300 deg",
        null,
        null,
        disc.Path);

    private static BoughtItem Packing(PackingDesign packing, VesselDesign design, ImmutableArray<PortSite> sites)
    {
        var volume = PackingRoom.Of(packing, design, sites);
        var fibre = packing.FibreDiameter is { } diameter ? $", fibre {NoteText.Length(diameter)} mm" : string.Empty;
        return new(
            packing.Name,
            1,
            $"{packing.Material}, stuffed to {NoteText.Length(packing.Density)} kg/m3{fibre}",
            volume * packing.Density / 1e6,
            volume,
            packing.Path);
    }
}
