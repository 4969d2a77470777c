using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>The piece at the pole of a half sphere of gores, dished from a disc and drilled along its ports' axes.</summary>
internal static class PolarCapPart
{
    public static Part Build(
        PortHost end, HemisphereHead head, GoreDesign gores, VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var name = Names.PolarCap(end);
        var shape = GoreShape.Of(end, head, gores, vessel);
        var dome = DrilledDome.OfSphere(
            HeadShape.Of(end, vessel)!.Frame, shape.OuterRadius, head.Wall, shape.CapAngle, [.. sites.Where(s => s.Port.Host == end)]);
        var blank = Blank(shape);
        return new(
            Slug.Of(name),
            name,
            PartKind.Crown,
            head.Material,
            head.Wall,
            StockPieces.Disc(blank, head.Wall, head.Material),
            [dome.Frame],
            dome.Solid,
            dome.Volume,
            DiscBlank.Of(
                blank,
                $"{name} {welds[WeldNumbers.CapSeam(gores)]} blank",
                [
                    $"{name.ToUpperInvariant()}, BLANK FOR DISHING, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, diameter {NoteText.Length(blank)} mm",
                    $"STARTING SIZE BY EQUAL AREA: dish to a mean radius of {NoteText.Length(shape.MeanRadius)} mm, trim to {NoteText.Length(gores.CapDiameter)} mm across the middle of the wall, edge square to the sphere. Millimetres.",
                    "Drill the ports after dishing, along their axes.",
                ]),
            dome.Holes,
            gores.Path);
    }

    /// <summary>
    /// Diameter of a disc with the cap's area on the mean sphere, sqrt(D^2 + 4 h^2) for rim D and height h (equal-area rule
    /// for raised work, Hodgson, "Machines and Tools Employed in the Working of Sheet Metals").
    /// </summary>
    private static double Blank(GoreShape shape)
    {
        var rim = shape.Gores.CapDiameter;
        var height = shape.MeanRadius * (1 - Math.Cos(shape.CapAngle));
        return Math.Sqrt((rim * rim) + (4 * height * height));
    }
}
