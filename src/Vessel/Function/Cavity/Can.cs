using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>A sleeve or cap, as walls of revolution round a space.</summary>
/// <param name="Inner">Heights of the space inside, mm in the vessel's frame.</param>
/// <param name="Outer">Heights of the whole thing, walls included.</param>
/// <param name="OpenEnd">Height of the open end that does not lie against a head; null when there is none.</param>
/// <param name="Plate">Area, edges and place of the holes in the plate that closes an end; null for none.</param>
/// <param name="Windows">In the wall, row by row, with the height of their lower edges.</param>
/// <param name="InWalls">What windows and holes leave open within the walls.</param>
internal sealed record Can(
    string Name,
    double InnerRadius,
    double OuterRadius,
    Interval Inner,
    Interval Outer,
    double? OpenEnd,
    (double Area, double Perimeter, OpeningShape Shape)? Plate,
    ImmutableArray<(WindowsDesign Design, double Sill)> Windows,
    ImmutableArray<RoomPiece> InWalls,
    string Path)
{
    /// <summary>Below this a plate counts as shut, mm2: what is left is rounding.</summary>
    private const double LeastOpening = 1e-6;

    /// <summary>All of a design, widest first: a can stands inside the nearest wider one that spans its height.</summary>
    public static ImmutableArray<Can> Of(VesselDesign vessel, ImmutableArray<Part> parts) =>
    [
        .. vessel.Inside.Sleeves.Select(sleeve => OfSleeve(sleeve, vessel, parts))
            .Concat(vessel.Inside.Caps.Select(cap => OfCap(cap, vessel, parts)))
            .OrderByDescending(can => can.OuterRadius),
    ];

    public bool Holds(double radius, double height) => radius < InnerRadius && Inner.Contains(height);

    public bool Holds(Can other) =>
        other != this && other.OuterRadius <= InnerRadius && other.Outer.Start < Inner.End && other.Outer.End > Inner.Start;

    private static Can OfSleeve(SleeveDesign sleeve, VesselDesign vessel, ImmutableArray<Part> parts)
    {
        var face = HeadSite.Of(sleeve.HangsFrom, vessel).InnerFace;
        var hangs = sleeve.HangsFrom == PortHost.Top;
        var heights = hangs ? new Interval(face - sleeve.Length, face) : new(face, face + sleeve.Length);
        ImmutableArray<(WindowsDesign Design, double Sill)> rows = [.. sleeve.Windows.Select(row => (row, heights.Start + row.Up))];
        return new(
            sleeve.Name, sleeve.InnerRadius, sleeve.OutsideDiameter / 2, heights, heights,
            hangs ? heights.Start : heights.End, null,
            rows,
            InWindows(
                rows,
                Wall(sleeve.OutsideDiameter, sleeve.Wall, sleeve.Length) - parts.Single(part => part.Id == Slug.Of(sleeve.Name)).Volume,
                new(sleeve.InnerRadius, sleeve.OutsideDiameter / 2)),
            sleeve.Path);
    }

    private static Can OfCap(CapDesign cap, VesselDesign vessel, ImmutableArray<Part> parts)
    {
        var site = CapSite.Of(cap, vessel);
        var up = cap.Opens == CapOpening.Up;
        var (skirt, plate) = (Part(CapParts.Ids(cap).Skirt), Part(CapParts.Ids(cap).Plate));
        Part Part(string id) => parts.Single(part => part.Id == id);

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
            open > LeastOpening ? (open, Edges(plate, cap), Holes(plate, site.Plate.Start)) : null,
            rows,
            [
                .. InWindows(
                    rows, Wall(cap.OutsideDiameter, cap.Wall, cap.Skirt) - skirt.Volume, new(radius - cap.Wall, radius)),
                .. open > LeastOpening ? new[] { new PrismPiece(site.Plate, open, 0, radius) } : [],
                .. cap.Outlet is { } outlet ? new[] { PrismPiece.Cylinder(site.Plate, Outlet(outlet, vessel).OuterRadius) } : [],
            ],
            cap.Path);
    }

    /// <summary>The tube takes its own metal out of the room again.</summary>
    private static PortDesign Outlet(string name, VesselDesign vessel) => vessel.Ports.Single(port => port.Name == name);

    /// <summary>Each row has its share of what is open in the wall, even over its height.</summary>
    private static ImmutableArray<RoomPiece> InWindows(
        ImmutableArray<(WindowsDesign Design, double Sill)> rows, double volume, Interval wall)
    {
        var whole = rows.Sum(row => row.Design.Count * row.Design.AreaOfOne);
        return
        [
            .. rows.Select(row => new PrismPiece(
                new(row.Sill, row.Sill + row.Design.Height),
                volume * (row.Design.Count * row.Design.AreaOfOne / whole) / row.Design.Height,
                wall.Start,
                wall.End)),
        ];
    }

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

    /// <summary>Of drain and pattern, mm.</summary>
    private static double Edges(Part plate, CapDesign cap) =>
        (cap.Outlet is null ? plate.Holes.Sum(hole => Math.PI * hole.Diameter) : 0)
        + plate.Fields.Sum(field => Turns.Full * field.Lattice.HoleRadius * field.Lattice.Count);

    /// <summary>Of a tube's whole wall, mm3.</summary>
    private static double Wall(double outsideDiameter, double wall, double length) =>
        Math.PI * (outsideDiameter - wall) * wall * length;
}
