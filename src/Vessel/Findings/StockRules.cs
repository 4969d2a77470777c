using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Flats that are larger than the sheet that the shop buys.</summary>
internal static class StockRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var (design, stock) = (assembly.Design, assembly.Design.Shop.Stock);
        var sheet = NestSheet.Of(stock);
        foreach (var (part, piece) in assembly.Parts.Where(Nest.IsCutFromSheet).Select(part => (part, NestPiece.Of(part))))
        {
            var (length, wide) = (part.Stock.Length, part.Stock.Width);
            var lain = piece.Turns.Select(turn => ShelfNest.Box(piece, turn))
                .MinBy(box => Math.Max(box.Width - sheet.FreeLength, box.Height - sheet.FreeWidth));
            string Remedy() => Divided(part, assembly, sheet) is var (key, count)
                ? $"put it together from {count} sheets ({key}: {count}), or "
                : "";
            Measured[] figures = [new("along the sheet", lain.Width, AtMost(sheet.FreeLength), "mm"),
                new("across it", lain.Height, AtMost(sheet.FreeWidth), "mm")];
            yield return new(
                FindingCodes.NoSheetHolds,
                Severity.Warning,
                [part.Id],
                () => $"the flat of {part.Name}, {NoteText.Length(length)} x {NoteText.Length(wide)} mm, finds no room on a sheet of {NoteText.Length(sheet.Length)} x "
                + $"{NoteText.Length(sheet.Width)} mm with {NoteText.Length(sheet.Margin)} mm kept from its edges{(piece.Turns.Length < 4 ? ", its bend lines across the grain" : "")}: "
                + $"{Remedy()}buy larger sheet (stock.sheet_length and sheet_width in the shop's file).",
                [.. figures.OrderBy(figure => figure.Free)],
                design.PlaceOf(part.Path),
                $"flat of {part.Name} on the sheet");
        }
    }

    /// <summary>
    /// The key that puts what a part is of together from more sheets, and the least number that does; null where none does.
    /// </summary>
    private static (string Key, int Count)? Divided(Part part, Assembly assembly, NestSheet sheet)
    {
        var design = assembly.Design;
        if (design.Shell.Courses.FirstOrDefault(course => Names.ShellParts(course, design).Contains(part.Id)) is { } course)
        {
            return Least(course.Seams.Count, count => course.IsCone
                ? Fits(ConeShape.Of(course with { Seams = course.Seams with { Count = count } }).Development.Outline(), sheet)
                : ShellFlat.Blank(course with { Seams = course.Seams with { Count = count } }).Width <= sheet.FreeLength
                    && course.Height <= sheet.FreeWidth) is { } sheets
                ? (course.SheetsPath, sheets) : null;
        }

        return assembly.Heads.FirstOrDefault(head => head.Path == part.Path)?.Divided(outline => Fits(outline, sheet));
    }

    private static int? Least(int now, Func<int, bool> fits) =>
        Enumerable.Range(now + 1, SheetSeams.Most - now).Select(count => (int?)count).FirstOrDefault(count => fits(count!.Value));

    /// <summary>Any way round: a cone has no grain to heed.</summary>
    private static bool Fits(Loop2 outline, NestSheet sheet)
    {
        var box = CurveMeasures.Bounds(outline);
        var (least, most) = (Math.Min(box.Width, box.Height), Math.Max(box.Width, box.Height));
        return most <= Math.Max(sheet.FreeLength, sheet.FreeWidth) && least <= Math.Min(sheet.FreeLength, sheet.FreeWidth);
    }
}
