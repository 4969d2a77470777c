using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Dishes;

/// <summary>The piece at the pole of a head of gores, dished from a disc and drilled along its ports' axes.</summary>
internal static class PolarCapPart
{
    public static Part Build(VesselEnd end, GoreShape shape, ImmutableArray<PortSite> sites, Welds welds)
    {
        var (name, head, gores) = (GoreDesign.CapOf(Names.Of(end)), shape.Design, shape.Gores);
        var dome = Dome(shape, sites);
        var blank = DiscBlank.Diameter(shape.Middle.Part(new(0, shape.CapReach)));
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
                $"{name} {welds.One(WeldRole.CrownSeam, shape.Design.Path)} blank",
                [
                    $"{name.ToUpperInvariant()}, BLANK FOR DISHING, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, diameter "
                        + $"{NoteText.Length(blank)} mm",
                    $"STARTING SIZE BY EQUAL AREA: dish to {Form(shape)}, trim to {NoteText.Length(gores.CapDiameter)} mm across the "
                        + $"middle of the wall, edge square to the {(head.IsSphere ? "sphere" : "wall")}. Millimetres.",
                    "Drill the ports after dishing, along their axes.",
                ]),
            dome.Holes,
            gores.Path)
        {
            Forming = Forming.Dished,
            Making = $"cut the blank of {name}, dish it to a gauge; trim, drill",
            StockNote = "blank for dishing, starting size",
        };
    }

    /// <summary>What lies within the seam of the polar cap.</summary>
    private static DrilledDome Dome(GoreShape shape, ImmutableArray<PortSite> ports) =>
        DrilledDome.Faces(shape.Head) is (SphereSurface { Radius: var radius }, _)
            ? DrilledDome.OfSphere(shape.Head.Frame, radius, shape.Head.Wall, shape.CapReach / shape.Middle.Length * Math.PI / 2, ports)
            : DrilledDome.Of(shape.Head.Frame, shape.Cap, ports);

    private static string Form(GoreShape shape)
    {
        // One arc round the axis all the way: a sphere, as a crown is, too.
        if (shape.Middle.Part(new(0, shape.CapReach)).Pieces is [ArcPiece { Center.U: 0, Radius: var radius }])
            return $"a mean radius of {NoteText.Length(radius)} mm";
        var depth = shape.Middle.At(shape.CapReach).V - shape.Middle.Start.V;
        return $"the {shape.Design.Form}, {NoteText.Length(depth)} mm deep";
    }
}
