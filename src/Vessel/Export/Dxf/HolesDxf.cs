using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Dxf;

/// <summary>
/// The layout for the drill press: where each tool goes. Nothing in it is to be cut, so the layer CUT is empty: the
/// part's outline is on NOTE, for reference; centres, tools and numbers are on MARK.
/// </summary>
public static class HolesDxf
{
    // The cross reaches so far beyond the tool's circle, mm, that it can be seen with the tool in place.
    private const double Overreach = 2;

    // Nobody centre-punches more than this by hand; a drawing of more only slows its reader down.
    private const int MostOfField = 2000;

    /// <param name="fitted">The part's flat; null when it has none.</param>
    public static void Write(Part part, FittedFlat? fitted, DrawingOptions options, Stream to)
    {
        DxfEntity[] outline = fitted is null ? [] : [FlatDxf.Outline(fitted.Outer, DxfLayer.Note)];
        var drawn = part.Fields.Where(IsDrawn).Aggregate(
            DxfDrawing.Of([.. outline, .. part.Holes.SelectMany(Drawn)]),
            (rest, field) => rest.Then(DxfDrawing.Of(field.Lattice, 3, center => Cross(center, field.Diameter, FieldOverreach(field)))));
        DxfDocument.Write(drawn.Then(DxfDrawing.Of([.. FlatDxf.Notes(Notes(part), drawn.Bounds)])), options.Release, to);
    }

    private static ImmutableArray<string> Notes(Part part) =>
    [
        $"{part.Name}: holes to drill, mm",
        "numbers as in the table of holes",
        .. part.Fields.Select(field => IsDrawn(field)
            ? $"{field.Purpose}: {field.Lattice.Count} holes of {NoteText.Length(field.Diameter)} mm, without their numbers"
            : $"{field.Purpose}: {field.Lattice.Count} holes of {NoteText.Length(field.Diameter)} mm, too many to draw: see the table of holes"),
    ];

    private static bool IsDrawn(HoleField field) => field.Lattice.Count <= MostOfField;

    /// <summary>Arms of neighbours stay apart.</summary>
    private static double FieldOverreach(HoleField field) => Math.Min(Overreach, (field.Lattice.Pitch - field.Diameter) / 4);

    private static IEnumerable<DxfEntity> Drawn(Hole hole)
    {
        var arm = (hole.Diameter / 2) + Overreach;
        var height = Math.Clamp(hole.Diameter / 4, 2.5, 5);
        var beside = new Point2(arm + height, arm);
        var number = hole.Number.ToString(CultureInfo.InvariantCulture);
        return
        [
            .. hole.ToolPlaces.SelectMany(place => Cross(place, hole.Diameter, hole.Shape is null ? Overreach : Overreach / 2)),
            .. FlatDxf.Letters(new(number, hole.Center + beside, height, 0)),
        ];
    }

    private static IEnumerable<DxfEntity> Cross(Point2 center, double diameter, double overreach)
    {
        var arm = (diameter / 2) + overreach;
        var (across, up) = (new Point2(arm, 0), new Point2(0, arm));
        return
        [
            new DxfLine(DxfLayer.Mark, center - across, center + across),
            new DxfLine(DxfLayer.Mark, center - up, center + up),
            new DxfCircle(DxfLayer.Mark, center, diameter / 2),
        ];
    }
}
