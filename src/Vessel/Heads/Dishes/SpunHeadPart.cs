using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Dishes;

/// <summary>A spun dish with its flange, drilled along its ports' axes.</summary>
internal static class SpunHeadPart
{
    public static Part Build(VesselEnd end, DishedHead head, HeadShape shape, ImmutableArray<PortSite> sites, Welds welds)
    {
        var name = Names.Of(end);
        var edge = NotchedEdge.OfDish(end, shape, sites);
        var dome = DrilledDome.Of(shape, [.. sites.Where(s => s.Port.End == end)], edge);
        var blank = DiscBlank.Diameter(shape.Middle);
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
            BlankFlat(name, head, shape, blank, welds, edge),
            dome.Holes,
            head.Path)
        {
            Forming = Forming.Spun,
            Making = $"cut the blank of {name} and have it spun; trim, drill it through the dome",
            StockNote = "blank for spinning, starting size",
        };
    }

    private static Flat BlankFlat(
        string name, DishedHead head, HeadShape shape, double diameter, Welds welds, NotchedEdge edge) => DiscBlank.Of(
        diameter,
        $"{name} {welds.One(WeldRole.HeadSeam, head.Path)} blank",
        [
            $"{name.ToUpperInvariant()}, BLANK FOR SPINNING, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, diameter "
                + $"{NoteText.Length(diameter)} mm",
            $"STARTING SIZE BY EQUAL AREA: spinning thins the wall, so spin a trial or trim to the {head.Form}. Millimetres.",
            .. Sizes(head, shape),
            "Drill the ports after spinning, along their axes.",
            .. edge.Ports.Select(site => $"'{site.Port.Name}' stands over the seam: its hole is made when that is welded."),
        ]);

    private static IEnumerable<string> Sizes(DishedHead head, HeadShape shape)
    {
        var flange = head.Flange > 0 ? $", straight flange {NoteText.Length(head.Flange)} mm" : string.Empty;
        if (!head.IsSphere || head.Flange > 0)
            yield return $"Inside {NoteText.Length(2 * shape.Inner.End.U)} mm wide, {NoteText.Length(shape.Depth)} mm "
                + $"deep{head.Radii}{flange}.";
    }
}
