using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export;

/// <summary>The table for the bench: each hole of a part, where it is and how it is made.</summary>
public static class HolesCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "number", "x_mm", "y_mm", "polar_radius_mm", "polar_angle_deg", "outside_arc_mm", "outside_height_mm",
        "diameter_mm", "size", "drill_at_mm", "depth", "thread", "tap_drill_mm", "made_by", "purpose",
    ];

    /// <summary>
    /// x, y and the polar pair are from the flat's origin. A window or slot has a size in place of a diameter, and the places of the drill
    /// that makes its corners or ends.
    /// </summary>
    public static void Write(Part part, Stream to) => Csv.Write(to, _columns, Holes(part).Select(Row));

    /// <summary>Those of fields are made one by one as they are written.</summary>
    private static IEnumerable<Hole> Holes(Part part)
    {
        foreach (var hole in part.Holes)
            yield return hole;
        var number = part.Holes.Length;
        foreach (var field in part.Fields)
        {
            foreach (var center in field.Lattice.Centers())
                yield return new(++number, field.Purpose, center, null, field.Diameter, null, null, field.Made, null);
        }
    }

    private static CsvCell[] Row(Hole hole) =>
    [
        hole.Number,
        hole.Center.U,
        hole.Center.V,
        hole.Center.Length,
        Turns.ToDegrees(hole.Center.Angle),
        hole.OnOutside?.U,
        hole.OnOutside?.V,
        hole.Shape is null ? hole.Diameter : default(double?),
        hole.Shape?.Text(NoteText.Length),
        hole.Shape is null ? null : string.Join("; ", hole.ToolPlaces.Select(at => $"{NoteText.Length(at.U)} {NoteText.Length(at.V)}")),
        hole.Depth is { } depth ? depth : "through",
        hole.Thread?.Thread,
        hole.Thread?.TapDrill,
        HoleWords.MadeBy(hole),
        hole.Purpose,
    ];
}
