using System.Collections.Immutable;

namespace Vessel.Planning;

/// <summary>The smallest rectangle found that holds all pieces of a nest: what a one-off needs of a remnant.</summary>
internal static class NestRectangle
{
    /// <summary>Widths that are tried, evenly from the narrowest that takes every piece to the sheet's.</summary>
    private const int Widths = 12;

    /// <summary>Widths that are tried with true outlines too: those whose boxes on shelves came out smallest.</summary>
    private const int Closer = 3;

    /// <summary>
    /// The nest on a sheet of its own, margins kept; null where one sheet does not hold all pieces. Never larger than what the
    /// boxes of the pieces take on shelves, at any of the widths that are tried.
    /// </summary>
    public static Nest? Of(Nest nest)
    {
        if (nest.UsedLength.Length != 1 || !nest.TooLarge.IsEmpty)
            return null;
        var least = nest.Pieces.Max(piece => piece.Turns.Min(turn => ShelfNest.Box(piece, turn).Height)) + (2 * nest.Sheet.Margin);
        var onShelves = Enumerable.Range(0, Widths)
            .Select(i => least + ((nest.Sheet.Width - least) * i / (Widths - 1)))
            .Where(width => width <= nest.Sheet.Width)
            .Select(width => nest.Sheet with { Width = width })
            .Select(sheet => (Sheet: sheet, Nest: Trimmed(nest, ShelfNest.Of(nest.Pieces, sheet))))
            .ToList();
        var byOutlines = onShelves.Where(tried => tried.Nest is not null)
            .OrderBy(tried => AreaOf(tried.Nest!)).Take(Closer)
            .Select(tried => Trimmed(nest, RasterNest.Of(nest.Pieces, tried.Sheet)));
        return onShelves.Select(tried => tried.Nest).Concat(byOutlines).Append(Trimmed(nest, [.. nest.Places.Cast<NestPlace?>()]))
            .OfType<Nest>()
            .MinBy(AreaOf);
    }

    private static double AreaOf(Nest nest) => nest.Sheet.Length * nest.Sheet.Width;

    /// <summary>Nest on a sheet that ends a margin beyond its pieces; null where they do not lie on one.</summary>
    private static Nest? Trimmed(Nest nest, ImmutableArray<NestPlace?> places)
    {
        var (sheet, pieces) = (nest.Sheet, nest.Pieces);
        if (places.Any(place => place is not { Sheet: 0 }))
            return null;
        var all = places.SelectMany(place => pieces[place!.Value.Piece].Outline.Select(place.Value.Of)).ToList();
        return Nest.Laid(
            nest.Material,
            nest.Thickness,
            sheet with { Length = all.Max(p => p.U) + sheet.Margin, Width = all.Max(p => p.V) + sheet.Margin },
            pieces,
            places);
    }
}
