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
        bool Fits(Loop2 outline, bool mayTurn) => CurveMeasures.Bounds(outline) is var box
            && ((box.Width <= sheet.FreeLength && box.Height <= sheet.FreeWidth)
                || (mayTurn && box.Height <= sheet.FreeLength && box.Width <= sheet.FreeWidth));
        foreach (var (part, piece) in assembly.Parts.Where(Nest.IsCutFromSheet).Select(part => (part, NestPiece.Of(part))))
        {
            var (length, wide) = (part.Stock.Length, part.Stock.Width);
            var lain = piece.Turns.Select(turn => ShelfNest.Box(piece, turn))
                .MinBy(box => Math.Max(box.Width - sheet.FreeLength, box.Height - sheet.FreeWidth));
            string Remedy() => assembly.Chamber.Walls.FirstOrDefault(wall => wall.Holds(part))?.Divided(Fits) is var (key, count)
                ? $"put it together from {count} sheets ({key}: {count}), or "
                : "";
            Measured[] figures = [new("along the sheet", lain.Width, AtMost(sheet.FreeLength), "mm"),
                new("across it", lain.Height, AtMost(sheet.FreeWidth), "mm")];
            yield return new(
                FindingCodes.NoSheetHolds,
                Severity.Warning,
                [part.Id],
                () => $"the flat of {part.Name}, {NoteText.Length(length)} x {NoteText.Length(wide)} mm, finds no room on a sheet of "
                + $"{NoteText.Length(sheet.Length)} x "
                + $"{NoteText.Length(sheet.Width)} mm with {NoteText.Length(sheet.Margin)} mm kept from its "
                + $"edges{(piece.Turns.Length < 4 ? ", its bend lines across the grain" : "")}: "
                + $"{Remedy()}buy larger sheet (stock.sheet_length and sheet_width in the shop's file).",
                [.. figures.OrderBy(figure => figure.Free)],
                design.PlaceOf(part.Path),
                $"flat of {part.Name} on the sheet");
        }
    }
}
