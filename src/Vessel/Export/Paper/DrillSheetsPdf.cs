using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Pdf;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export.Paper;

/// <summary>drill-sheets.pdf: a page for each drilled part, with its picture and its holes in both units.</summary>
internal static class DrillSheetsPdf
{
    private const double Letter = 2.5;

    private const double Line = 4.2;

    private const double Gap = 5;

    public static bool Has(Assembly assembly) => assembly.Parts.Any(IsDrilled);

    public static bool IsDrilled(Part part) => !part.Holes.IsEmpty || !part.Fields.IsEmpty;

    public static ImmutableArray<Page> Pages(Build build) =>
        [.. build.Parts.Where(built => IsDrilled(built.Part)).SelectMany(built => Pages(built, build))];

    private static IEnumerable<Page> Pages(BuiltPart built, Build build)
    {
        var (part, units) = (built.Part, new TwoUnits(build.Assembly.Design.Units));
        var frame = new PageFrame(build.Options.Paper.Size);
        var area = frame.Area;
        var (picture, height) = HolePicture.Of(built, new(new(area.Min.U, area.Max.V - (area.Height / 2)), area.Max));
        var filled = new TablePages(area, Gap);
        filled.Add(picture, height + Gap);
        foreach (var note in Notes(part, units))
            filled.Add([Text.Fitted(note, new(area.Min.U, filled.Top - Letter), Letter, area.Width)], Line);
        foreach (var table in HoleTables.Of(part, units))
            filled.Add(table);
        return filled.Pages.Select((items, i) => frame.Page(
            frame.Title(
                $"{part.Name}: drill sheet, {part.Quantity} off",
                $"page {i + 1}",
                $"{TemplatesPdf.VesselName(build.Assembly.Design)}; {part.Material.Name}, {StockWords.Section(part, NoteText.Length)} mm; "
                    + "do not measure off the picture"),
            items));
    }

    private static IEnumerable<string> Notes(Part part, TwoUnits units)
    {
        yield return part.Holes.Any(hole => hole.Outline is null) ? "Seen along the axis of the part, from outside; x and y from the axis."
            : part.Flat!.From is PlaneDevelopment ? "Outside face up; x and y from the middle."
            : "Outside face up; x and y from the lower left corner of the flat.";
        if (part.Holes.Any(hole => hole.OnOutside is not null))
            yield return "Arc: round the outside from 0 deg, towards increasing angle; height: above the lower edge.";
        foreach (var same in part.Holes.Where(hole => HoleWords.MadeBy(hole) != HoleWords.Tool(hole)).GroupBy(HoleWords.MadeBy))
            yield return $"{string.Join(", ", same.Select(hole => hole.Number))}: {same.Key}.";
        foreach (var field in part.Fields)
        {
            yield return $"{field.Purpose}: {field.Lattice.Count} holes of {units.Both(field.Diameter)}, at least "
                + $"{units.Both(field.Lattice.Pitch)} apart, "
                + $"{HoleWords.Round(field.Diameter, null)}.";
        }
    }
}
