using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>
/// The pages of a template: one where it fits with its notes, else a page of notes with a map of the sheets, and the
/// sheets to be joined.
/// </summary>
internal static class TemplatePages
{
    /// <summary>More sheets than that are not joined true by hand.</summary>
    public const int MostSheets = 60;

    private const double Letter = 2.5;

    private const double Line = 4.2;

    /// <summary>Between drawing and notes, mm.</summary>
    private const double Gap = 6;

    /// <summary>A pen's half width and a little more, mm.</summary>
    private const double Ink = 1;

    public static IEnumerable<Page> Of(Template template, PaperSize paper, string vessel)
    {
        var bounds = Grown(template.Bounds);
        PaperSize[] ways = [paper, paper.Lying];
        return ways.Where(way => FitsOne(template, bounds, way)).FirstOrDefault() is { } one
            ? [Single(template, bounds, one, vessel)]
            : Joined(template, bounds, ways.MinBy(way => Tiling.Of(bounds, new PageFrame(way).Area).Count)!, paper, vessel);
    }

    private static Box2 Grown(Box2 box) => new(box.Min - new Point2(Ink, Ink), box.Max + new Point2(Ink, Ink));

    private static bool FitsOne(Template template, Box2 bounds, PaperSize paper)
    {
        var area = new PageFrame(paper).Area;
        return bounds.Width <= area.Width && bounds.Height + Gap + NotesHeight(template, area) <= area.Height;
    }

    private static Page Single(Template template, Box2 bounds, PaperSize paper, string vessel)
    {
        var frame = new PageFrame(paper);
        var area = frame.Area;
        var by = new Point2(((area.Min.U + area.Max.U - bounds.Width) / 2) - bounds.Min.U, area.Max.V - bounds.Max.V);
        return Page(
            frame,
            template,
            "sheet 1 of 1, true size",
            vessel,
            [
                .. template.Drawn.Select(item => Placing.Placed(item, 1, by)),
                .. Notes(template.Notes, area, area.Max.V - bounds.Height - Gap),
            ]);
    }

    private static IEnumerable<Page> Joined(Template template, Box2 bounds, PaperSize way, PaperSize paper, string vessel)
    {
        var tiling = Tiling.Of(bounds, new PageFrame(way).Area);
        if (tiling.Count > MostSheets)
        {
            ImmutableArray<string> notes =
            [
                .. template.Notes,
                $"TOO LARGE FOR PAPER: {tiling.Count} sheets would not be joined true. Mark it by the table of holes and the DXF.",
            ];
            yield return Page(
                new(paper), template, "notes", vessel, Notes(notes, new PageFrame(paper).Area, new PageFrame(paper).Area.Max.V));
            yield break;
        }

        yield return Map(template, tiling, paper, vessel);
        foreach (var tile in tiling.Tiles())
        {
            var frame = new PageFrame(way);
            var by = frame.Area.Min - tile.Window.Min;
            yield return Page(
                frame,
                template,
                $"sheet {tile.Number} of {tiling.Count}, true size",
                vessel,
                template.Drawn.SelectMany(item => Placing.Within(item, tile.Window))
                    .Concat(TileMarks.Of(tile))
                    .Select(item => Placing.Placed(item, 1, by)));
        }
    }

    /// <summary>Notes above, and below them the whole made smaller with the sheets' edges.</summary>
    private static Page Map(Template template, Tiling tiling, PaperSize paper, string vessel)
    {
        ImmutableArray<string> notes =
        [
            .. template.Notes,
            $"{tiling.Count} SHEETS: cut one of two neighbours along the dashed line, lay it on the other so that the crosses meet, and "
                + "tape. "
                + "The map below is not to scale.",
        ];
        var frame = new PageFrame(paper);
        var (area, room) = (frame.Area, tiling.Room);
        var below = area.Max.V - NotesHeight(notes, area) - Gap;
        var scale = Math.Min(1, Math.Min(area.Width / room.Width, (below - area.Min.V) / room.Height));
        var by = new Point2(((area.Min.U + area.Max.U - (scale * room.Width)) / 2) - (scale * room.Min.U), below - (scale * room.Max.V));
        Item Small(Item item) => Placing.Placed(item, scale, by);
        return Page(
            frame,
            template,
            $"map of {tiling.Count} sheets",
            vessel,
            [
                .. Notes(notes, area, area.Max.V),
                .. template.Drawn.Where(item => item is not Text).Select(Small),
                .. tiling.Tiles().SelectMany(tile => new[]
                {
                    Small(Stroke.Rectangle(tile.Core, Pens.PaleDashes)),
                    Text.Middle($"{tile.Number}", (0.5 * scale * (tile.Core.Min + tile.Core.Max)) + by, 5),
                }),
            ]);
    }

    private static Page Page(PageFrame frame, Template template, string sheet, string vessel, IEnumerable<Item> items) =>
        frame.Page(frame.Items(template.Title, sheet, vessel), items);

    private static double NotesHeight(Template template, Box2 area) => NotesHeight(template.Notes, area);

    private static double NotesHeight(ImmutableArray<string> notes, Box2 area) =>
        Line * notes.Sum(note => Wrapped(note, area.Width).Count());

    private static IEnumerable<Item> Notes(ImmutableArray<string> notes, Box2 area, double top) =>
        notes.SelectMany(note => Wrapped(note, area.Width))
            .Select((line, i) => Text.Left(line, new(area.Min.U, top - (i * Line) - Letter), Letter));

    /// <summary>Broken at spaces; a word that is longer than a line stands alone.</summary>
    private static IEnumerable<string> Wrapped(string note, double width)
    {
        var line = string.Empty;
        foreach (var word in note.Split(' '))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Strokes.Width(longer, Letter) > width)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }
}
