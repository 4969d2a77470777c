using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A spun half sphere, drilled along its ports' axes.</summary>
internal static class HemispherePart
{
    public static Part Build(PortHost end, HemisphereHead head, VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var name = Names.Of(end);
        var site = HeadSite.Of(end, vessel);
        var dome = new DrilledDome(site, head.Wall, Math.PI / 2, [.. sites.Where(s => s.Port.Host == end)]);
        var blank = Math.Sqrt(2) * (2 * site.Radius - head.Wall);
        return new(
            name,
            name,
            PartKind.Head,
            head.Material,
            head.Wall,
            StockPieces.Disc(blank, head.Wall, head.Material),
            [dome.Frame],
            dome.Solid,
            dome.Volume,
            BlankFlat(name, head, blank, welds),
            dome.Holes,
            head.Path);
    }

    /// <summary>
    /// The disc that spinning starts from: as much area as the mean sphere, diameter sqrt(2) x mean diameter (equal-area
    /// rule for raised work, Hodgson, "Machines and Tools Employed in the Working of Sheet Metals").
    /// </summary>
    private static Flat BlankFlat(string name, HemisphereHead head, double diameter, WeldNumbers welds) => DiscBlank.Of(
        diameter,
        $"{name} {welds[head.Path]} blank",
        [
            $"{name.ToUpperInvariant()}, BLANK FOR SPINNING, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, diameter {NoteText.Length(diameter)} mm",
            "STARTING SIZE BY EQUAL AREA: spinning thins the wall, so spin a trial or trim to the half sphere. Millimetres.",
            "Drill the ports after spinning, along their axes.",
        ]);
}
