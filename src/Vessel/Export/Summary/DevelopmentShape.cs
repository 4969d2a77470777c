using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Summary;

/// <summary>Layout of how a flat lies on its part. The origin is where the part's angle seam_deg at height 0 lies on the flat.</summary>
internal static class DevelopmentShape
{
    public static Shape<Flat> Entry { get; } = new RecordShape<Flat>("Place of the flat on the part")
        .Text("kind", "rolled, wrapped, folded, cone, gore, blank or plane", Kind)
        .OptionalNumber("radius_mm", "Of the surface that keeps its length", flat => flat.From switch
        {
            RolledDevelopment rolled => rolled.NeutralRadius,
            WrappedDevelopment wrapped => wrapped.Radius,
            GoreDevelopment gore => gore.Radius,
            _ => null,
        })
        .OptionalNumber("k", "Place of the neutral line in the wall, from the inside", flat => (flat.From as RolledDevelopment)?.K)
        .OptionalNumber("half_angle_deg", "Gore: of the sphere, from its middle to a side; cone: between axis and line", flat =>
            flat.From switch
        {
            ConeDevelopment cone => Turns.ToDegrees(cone.HalfAngle),
            GoreDevelopment gore => Turns.ToDegrees(gore.HalfAngle),
            _ => null,
        })
        .OptionalNumber("seam_deg", "Angle at the flat's edge", flat => flat.From switch
        {
            RolledDevelopment rolled => Turns.ToDegrees(rolled.Seam),
            WrappedDevelopment wrapped => Turns.ToDegrees(wrapped.Start),
            ConeDevelopment cone => Turns.ToDegrees(cone.Seam),
            _ => null,
        })
        .OptionalNumber(
            "lap_mm", "Wrapped: excess over once round, where no line up the tube is free of holes",
            flat => flat.From is WrappedDevelopment { Lap: > 0 } wrapped ? wrapped.Lap : null)
        .OptionalNumber(
            "lap_area_mm2", "Wrapped: area drawn twice, which the area leaves out",
            flat => flat.From is WrappedDevelopment { Lap: > 0 } ? flat.LapArea : null)
        .OptionalCount("sheets", "Rolled and cone: equal sheets that go round", flat => flat.From switch
        {
            RolledDevelopment rolled => rolled.Sheets,
            ConeDevelopment cone => cone.Segments,
            _ => null,
        })
        .OptionalNumber("gap_mm", "Left open at the seam; below zero where the seam is to draw in by more", flat => flat.From switch
        {
            RolledDevelopment rolled => rolled.Gap,
            ConeDevelopment cone => cone.Gap,
            _ => null,
        })
        .OptionalNumber("trim_mm", "Added at each end of a rolled sheet, to be cut off", flat => flat.From switch
        {
            RolledDevelopment { Trim: > 0 } rolled => rolled.Trim,
            ConeDevelopment { Trim: > 0 } cone => cone.Trim,
            _ => null,
        })
        .OptionalChoice(
            "across", "Folded: the axis that the bends cross",
            flat => flat.From is FoldedDevelopment folded ? folded.Sheet.Across.U == 1 ? "x" : "y" : null, "x", "y")
        .Optional(
            "bends",
            flat => (flat.From as FoldedDevelopment)?.Sheet is { } sheet ? sheet.Bends.Select(bend => (bend, sheet.Thickness)) : null,
            Items.List("Folded: in their order", Bend()))
        .OptionalNumber("centre_line_mm", "Gore: length along its middle", flat => Gore(flat)?.Length)
        .OptionalNumber("side_mm", "Gore: length of a side; cone: of a seam edge", flat => flat.From switch
        {
            ConeDevelopment cone => cone.SeamLength,
            GoreDevelopment gore => gore.SideLength,
            _ => null,
        })
        .OptionalMinMax(
            "tip_to_edge_mm", "Cone: from the tip to the narrow and to the wide edge", flat => (flat.From as ConeDevelopment)?.Lengths)
        .OptionalNumber("stretch", "Gore: of the metal, at its sides", flat => Gore(flat)?.Stretch)
        .OptionalNumber("flat_inside_mm", "Gore: distance of a straight strip inside the sphere", flat => Gore(flat)?.FlatInside)
        .OptionalNumber("flat_outside_mm", "Gore: distance of a straight strip outside the sphere", flat => Gore(flat)?.FlatOutside)
        .OptionalNumber("radial_error", "Gore: share of the radius", flat => Gore(flat)?.RadialError)
        .List("origin", "Where seam_deg at height 0 lies on the flat, mm", Origin, Items.Number("x, y"));

    private static string Kind(Flat flat) => flat.From switch
    {
        RolledDevelopment => "rolled",
        WrappedDevelopment => "wrapped",
        FoldedDevelopment => "folded",
        ConeDevelopment => "cone",
        GoreDevelopment => "gore",
        _ => flat.Kind == FlatKind.Blank ? "blank" : "plane",
    };

    private static GoreDevelopment? Gore(Flat flat) => flat.From as GoreDevelopment;

    private static IEnumerable<double> Origin(Flat flat) => flat.From switch
    {
        RolledDevelopment rolled => [rolled.Trim - (rolled.Gap / 2), 0],
        WrappedDevelopment wrapped => [0, wrapped.Lift],
        _ => [0, 0],
    };

    /// <summary>Each bend's line by where it lies on x or y; angles are positive towards the viewer.</summary>
    private static RecordShape<(Bend Bend, double Thickness)> Bend() => new RecordShape<(Bend Bend, double Thickness)>("A bend")
        .Number("line_mm", "Where its line crosses the axis", at => at.Bend.Line)
        .Number("angle_deg", "Positive towards the viewer", at => Turns.ToDegrees(at.Bend.Angle))
        .Number("inside_radius_mm", "Of the bend", at => at.Bend.InsideRadius)
        .Number("k", "Place of the neutral line, as a share of the thickness from the inside", at => at.Bend.K)
        .Number("allowance_mm", "Length of the flat that the bend takes up", at => at.Bend.Allowance(at.Thickness));
}
