using System.Collections.Immutable;
using System.Globalization;
using Vessel.Export.Drawing;
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
        Item[] drawn =
        [
            .. fitted is null ? Array.Empty<Item>() : [fitted.Outer with { Pen = Pens.Note }],
            .. part.Holes.SelectMany(Drawn),
            .. part.Fields.Where(IsDrawn).Select(field => Pattern.On(field.Lattice, Tool(default, field.Diameter, FieldOverreach(field)))),
        ];
        DxfDocument.Write([.. drawn, .. FlatDxf.Notes(Notes(part), drawn)], options.Release, to);
    }

    private static ImmutableArray<string> Notes(Part part) =>
    [
        $"{part.Name}: holes to drill, mm",
        "numbers as in the table of holes",
        .. part.Fields.Select(field => IsDrawn(field)
            ? $"{field.Purpose}: {field.Lattice.Count} holes of {NoteText.Length(field.Diameter)} mm, without their numbers"
            : $"{field.Purpose}: {field.Lattice.Count} holes of {NoteText.Length(field.Diameter)} mm, too many to draw: see the table of "
                + "holes"),
    ];

    private static bool IsDrawn(HoleField field) => field.Lattice.Count <= MostOfField;

    /// <summary>Arms of neighbours stay apart.</summary>
    private static double FieldOverreach(HoleField field) => Math.Min(Overreach, (field.Lattice.Pitch - field.Diameter) / 4);

    private static IEnumerable<Item> Drawn(Hole hole)
    {
        var arm = (hole.Diameter / 2) + Overreach;
        var height = Math.Clamp(hole.Diameter / 4, 2.5, 5);
        var beside = new Point2(arm + height, arm);
        var number = hole.Number.ToString(CultureInfo.InvariantCulture);
        return
        [
            .. hole.ToolPlaces.SelectMany(place => Tool(place, hole.Diameter, hole.Shape is null ? Overreach : Overreach / 2)),
            Text.Round(number, hole.Center + beside, height, 0, Pens.Mark),
        ];
    }

    /// <summary>A tool's circle and the cross through its middle.</summary>
    private static ImmutableArray<Item> Tool(Point2 center, double diameter, double overreach) =>
        [.. Stroke.Cross(center, (diameter / 2) + overreach, Pens.Mark), new Circle(center, diameter / 2, Pens.Mark)];
}
