using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Planning;

/// <summary>
/// Bounding boxes on shelves across the sheet, tallest first: quick, and never worse than the true outlines may be asked
/// to be.
/// </summary>
internal static class ShelfNest
{
    /// <summary>Null for a piece that no sheet holds.</summary>
    public static ImmutableArray<NestPlace?> Of(ImmutableArray<NestPiece> pieces, NestSheet sheet)
    {
        var places = new NestPlace?[pieces.Length];
        var boxes = pieces.Select((piece, i) => (Index: i, Turn: Turn(piece, sheet)))
            .Where(box => box.Turn is not null)
            .Select(box => (box.Index, Turn: box.Turn!.Value, Box: Box(pieces[box.Index], box.Turn.Value)))
            .OrderByDescending(box => box.Box.Width).ThenBy(box => box.Index);
        var (number, x, y, depth) = (0, 0.0, 0.0, 0.0);
        foreach (var (index, turn, box) in boxes)
        {
            if (y > 0 && y + box.Height > sheet.FreeWidth + 1e-9)
                (x, y, depth) = (x + depth + sheet.Spacing, 0, 0);
            if (x > 0 && x + box.Width > sheet.FreeLength + 1e-9)
                (number, x, y, depth) = (number + 1, 0, 0, 0);
            places[index] = new(index, number, turn, new Point2(sheet.Margin + x, sheet.Margin + y) - box.Min);
            y += box.Height + sheet.Spacing;
            depth = Math.Max(depth, box.Width);
        }

        return [.. places];
    }

    /// <summary>Whether a sheet of its own holds it.</summary>
    public static bool IsHeld(NestPiece piece, NestSheet sheet) => Turn(piece, sheet) is not null;

    internal static Box2 Box(NestPiece piece, int turn) =>
        piece.Outline.Aggregate(Box2.Empty, (box, p) => box.Join(NestPlace.Turned(p, turn)));

    /// <summary>The turn that lays the longer side across the sheet where that is free; null where none fits.</summary>
    private static int? Turn(NestPiece piece, NestSheet sheet)
    {
        var turns = piece.Turns
            .Where(turn => Box(piece, turn) is var box && box.Width <= sheet.FreeLength + 1e-9 && box.Height <= sheet.FreeWidth + 1e-9)
            .OrderBy(turn => Box(piece, turn).Width)
            .ToList();
        return turns.Count == 0 ? null : turns[0];
    }
}
