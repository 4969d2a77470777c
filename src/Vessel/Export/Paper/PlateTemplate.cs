using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Paper;

/// <summary>Paper to be stuck on sheet: outline, centres to punch, bend lines; and for bends a gauge to hold against them.</summary>
internal static class PlateTemplate
{
    /// <summary>Nobody punches more than this by hand.</summary>
    private const int MostOfField = 2000;

    /// <summary>Length of a gauge's legs, mm.</summary>
    private const double Leg = 50;

    public static IEnumerable<Template> Of(Part part, FittedFlat fitted)
    {
        var flat = fitted.Flat;
        yield return new(
            $"{part.Name}: lay on the sheet",
            [
                fitted.Metal,
                .. fitted.Marks,
                .. FlatDrawing.Bends(flat),
                .. flat.Bends.Select((bend, i) => FlatDrawing.BendWords(bend.A, bend.B, bend.Words(i + 1), 2.5, Pens.Note)),
                .. part.Holes.Where(hole => hole.Outline is not null).SelectMany(hole => BenchMarks.Drilled(hole, at => at)),
                .. part.Fields.Where(IsDrawn).Select(field =>
                    Pattern.On(field.Lattice, Stroke.Cross(default, Math.Min(field.Diameter / 2, 2), Pens.Thin))),
            ],
            [
                .. flat.Notes,
                .. part.Holes.IsEmpty ? Array.Empty<string>()
                    : ["At each hole: its number in the table of holes, and its size in mm. Punch where a cross meets."],
                .. part.Fields.Select(field => IsDrawn(field)
                    ? $"{field.Purpose}: punch {field.Lattice.Count} crosses, drill {NoteText.Length(field.Diameter)} mm."
                    : $"{field.Purpose}: {field.Lattice.Count} holes, too many to punch by hand; see the DXF."),
                .. flat.Bends.IsEmpty ? Array.Empty<string>()
                    : ["Long dashes: middle of a bend. Up is towards you, who see the outside. The gauge is on the next page."],
            ]);
        foreach (var bend in flat.Bends.GroupBy(bend => (Degrees: NoteText.Degrees(Math.Abs(bend.Angle)), bend.InsideRadius))
            .Select(same => same.First()))
            yield return Gauge(part, bend);
    }

    private static bool IsDrawn(HoleField field) => field.Lattice.Count <= MostOfField;

    /// <summary>
    /// A piece of card whose corner fits into the bend: legs at the angle that stays, the corner rounded as the bend is
    /// inside.
    /// </summary>
    private static Template Gauge(Part part, BendLine bend)
    {
        var (inside, r) = (Math.PI - Math.Abs(bend.Angle), bend.InsideRadius);
        // The corner's circle touches both legs; its centre lies on the half of the angle.
        var (right, left) = (Point2.Polar(1, (Math.PI - inside) / 2), Point2.Polar(1, (Math.PI + inside) / 2));
        var setback = r / Math.Tan(inside / 2);
        var reach = setback + Leg;
        var words = $"{NoteText.Degrees(inside)} deg inside, R {NoteText.Length(r)}";
        return new(
            $"{part.Name}: gauge for the bends",
            [
                new Stroke(
                    [new(setback * left, Math.Tan(Math.Abs(bend.Angle) / 4)), new(setback * right, 0), new(reach * right, 0),
                        new(reach * left, 0)],
                    Pens.Edge,
                    Closed: true),
                Text.Middle(words, new(0, reach * right.V * 0.8), 2.5),
                Text.Middle(part.Name, new(0, (reach * right.V * 0.8) - 5), 2.5),
            ],
            [
                $"Stick on card, cut out, hold inside the bend: turned by {NoteText.Degrees(Math.Abs(bend.Angle))} deg, so "
                    + $"{NoteText.Degrees(inside)} deg are left between the legs.",
                "Overbend for spring-back until the gauge fits without light.",
            ]);
    }
}
