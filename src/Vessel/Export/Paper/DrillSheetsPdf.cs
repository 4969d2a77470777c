using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Pdf;
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

    public static void Write(Build build, Stream to)
    {
        var design = build.Assembly.Design;
        PdfDocument.Write(
            $"{design.Name}: drill sheets",
            $"vessel {build.Options.ToolVersion}",
            [.. build.Parts.Where(built => IsDrilled(built.Part)).SelectMany(built => Pages(built, build))],
            to);
    }

    private static IEnumerable<Page> Pages(BuiltPart built, Build build)
    {
        var (part, units) = (built.Part, new TwoUnits(build.Assembly.Design.Units));
        var frame = new PageFrame(build.Options.Paper.Size);
        var area = frame.Area;
        var notes = Notes(part, units);
        var tables = HoleTables.Of(part, units);
        var most = area.Height / 2;
        var (picture, height) = HolePicture.Of(built, new(new(area.Min.U, area.Max.V - most), area.Max));
        var items = picture.ToList();
        var top = area.Max.V - height - Gap;
        foreach (var note in notes)
        {
            items.Add(Text.Fitted(note, new(area.Min.U, top - Letter), Letter, area.Width));
            top -= Line;
        }

        var sheet = 1;
        foreach (var table in tables)
        {
            for (var done = 0; done < table.Rows.Length;)
            {
                // The header and at least one row.
                var room = (int)Math.Floor((top - area.Min.V) / table.RowHeight) - 1;
                if (room < 1)
                {
                    yield return Page(frame, part, sheet++, build, items);
                    (items, top) = ([], area.Max.V);
                    continue;
                }

                var rows = table.Rows.Skip(done).Take(room).ToList();
                items.AddRange(table.Items(new(area.Min.U, top), area.Width, rows));
                top -= ((rows.Count + 1) * table.RowHeight) + Gap;
                done += rows.Count;
            }
        }

        yield return Page(frame, part, sheet, build, items);
    }

    private static Page Page(PageFrame frame, Part part, int sheet, Build build, List<Item> items) => new(
        frame.Size.Width,
        frame.Size.Height,
        [
            .. frame.Title(
                $"{part.Name}: drill sheet, {part.Quantity} off",
                $"page {sheet}",
                $"{TemplatesPdf.VesselName(build.Assembly.Design)}; {part.Material.Name}, {StockWords.Section(part, NoteText.Length)} mm; do not measure off the picture"),
            .. items,
        ]);

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
            yield return $"{field.Purpose}: {field.Lattice.Count} holes of {units.Both(field.Diameter)}, at least {units.Both(field.Lattice.Pitch)} apart, "
                + $"{HoleWords.Round(field.Diameter, null)}.";
        }
    }
}
