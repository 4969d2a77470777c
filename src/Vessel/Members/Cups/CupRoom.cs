using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Inside;

namespace Vessel.Members.Cups;

/// <summary>The room in a cup and the ways into it.</summary>
internal static class CupRoom
{
    public static Enclosure Of(CupDesign cap, VesselDesign vessel, Part skirt, Part plate)
    {
        var site = CupSite.Of(cap, vessel);
        var up = cap.Opens == CupOpening.Up;

        // Whatever of the plate's disc is not metal is open, but for the way of an outlet, whose gap is welded shut.
        var radius = cap.OutsideDiameter / 2;
        var way = cap.Outlet is { } through ? Outlet(through, vessel).OuterRadius + cap.Clearance : 0;
        var open = (Math.PI * ((radius * radius) - (way * way))) - (plate.Volume / cap.Wall);
        ImmutableArray<(WindowsDesign Design, double Sill)> rows =
            [.. cap.Windows.Select(row => (row, up ? site.Skirt.Start + row.Up : site.Skirt.End - row.Up - row.Height))];
        return new(
            cap.Name, radius - cap.Wall, radius, site.Skirt,
            up ? new(site.Plate.Start, site.Skirt.End) : new(site.Skirt.Start, site.Plate.End),
            up ? null : site.Skirt.Start,
            open > Enclosure.LeastOpening ? (open, Edges(plate, cap), Holes(plate, site.Plate.Start)) : null,
            rows,
            [
                .. TubeWalls.InWindows(
                    rows, TubeWalls.Wall(cap.OutsideDiameter, cap.Wall, cap.Skirt) - skirt.Volume, new(radius - cap.Wall, radius)),
                .. open > Enclosure.LeastOpening ? new[] { new PrismPiece(site.Plate, open, 0, radius) } : [],
                .. cap.Outlet is { } outlet ? new[] { PrismPiece.Cylinder(site.Plate, Outlet(outlet, vessel).OuterRadius) } : [],
            ],
            cap.Path);
    }

    /// <summary>The tube takes its own metal out of the room again.</summary>
    private static PortDesign Outlet(string name, VesselDesign vessel) => vessel.Ports.Single(port => port.Name == name);

    /// <summary>The drain in the middle, or the pattern; a pattern reaches as far as its outermost holes.</summary>
    private static OpeningShape Holes(Part plate, double height)
    {
        if (plate.Fields.IsEmpty)
            return new RoundEdge(plate.Holes[0].Diameter / 2, height, height);
        var lattice = plate.Fields[0].Lattice;
        return new HolesEdge(
            [.. lattice.Centers().Select(at => plate.Placements[0].Turn(new(at.U, at.V, 0))).Select(at => new Point2(at.X, at.Y))],
            lattice.HoleRadius,
            height,
            height);
    }

    /// <summary>Length of the edges of drain and pattern, mm.</summary>
    private static double Edges(Part plate, CupDesign cap) =>
        (cap.Outlet is null ? plate.Holes.Sum(hole => Math.PI * hole.Diameter) : 0)
        + plate.Fields.Sum(field => Turns.Full * field.Lattice.HoleRadius * field.Lattice.Count);
}
