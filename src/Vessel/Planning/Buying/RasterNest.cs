using System.Collections.Immutable;
using System.Numerics;
using Vessel.Geometry;

namespace Vessel.Planning;

/// <summary>
/// True outlines on a grid of cells: each piece, widened by half the spacing, takes every cell that it touches, and no cell
/// is taken twice; so widened pieces never meet, and pieces keep the spacing. Largest first, each as near to the sheet's end as
/// it goes, then as low.
/// </summary>
internal sealed class RasterNest
{
    /// <summary>Cells along the sheet's shorter side.</summary>
    private const int CellsAcross = 400;

    private readonly NestSheet _sheet;
    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;

    /// <summary>Taken cells by sheet, then by column along the sheet, as bits across it.</summary>
    private readonly List<BigInteger[]> _taken = [];

    private RasterNest(NestSheet sheet, double cell)
    {
        (_sheet, _cell) = (sheet, cell);
        // The widened pieces may stand half the spacing into the margin.
        _columns = (int)Math.Floor((sheet.FreeLength + sheet.Spacing) / cell);
        _rows = (int)Math.Floor((sheet.FreeWidth + sheet.Spacing) / cell);
    }

    /// <summary>Null for a piece that no sheet holds.</summary>
    public static ImmutableArray<NestPlace?> Of(ImmutableArray<NestPiece> pieces, NestSheet sheet)
    {
        var largest = pieces.Max(piece => ShelfNest.Box(piece, 0) is var box ? Math.Max(box.Width, box.Height) : 0);
        var nest = new RasterNest(sheet, Math.Max(0.5, Math.Min(sheet.FreeWidth, 4 * largest) / CellsAcross));
        var places = new NestPlace?[pieces.Length];
        foreach (var i in Enumerable.Range(0, pieces.Length).OrderByDescending(i => pieces[i].Area).ThenBy(i => i))
            places[i] = nest.Put(pieces[i], i);
        return [.. places];
    }

    private NestPlace? Put(NestPiece piece, int index)
    {
        var masks = piece.Turns.Select(turn => Mask.Of(piece, turn, _sheet.Spacing / 2, _cell))
            .Where(mask => mask.Columns.Length <= _columns && mask.Height <= _rows)
            .ToList();
        if (masks.Count == 0)
            return null;
        for (var sheet = 0; ; sheet++)
        {
            if (sheet == _taken.Count)
                _taken.Add(new BigInteger[_columns]);
            // The place whose far end comes least far along the sheet.
            (int End, int X, int Y, Mask? Mask) best = (int.MaxValue, 0, 0, null);
            foreach (var mask in masks)
            {
                for (var x = 0; x + mask.Columns.Length <= Math.Min(_columns, best.End - 1); x++)
                {
                    if (Lowest(_taken[sheet], mask, x) is not { } y)
                        continue;
                    best = (x + mask.Columns.Length, x, y, mask);
                    break;
                }
            }

            if (best.Mask is not { } chosen)
                continue;
            for (var c = 0; c < chosen.Columns.Length; c++)
                _taken[sheet][best.X + c] |= chosen.Columns[c] << best.Y;
            var corner = new Point2(
                _sheet.Margin - (_sheet.Spacing / 2) + (best.X * _cell), _sheet.Margin - (_sheet.Spacing / 2) + (best.Y * _cell));
            return new(index, sheet, chosen.Turn, corner - chosen.Corner);
        }
    }

    /// <summary>The lowest row at which the mask is free with its first column at x; jumps past what it meets.</summary>
    private int? Lowest(BigInteger[] taken, Mask mask, int x)
    {
        for (var y = 0; y + mask.Height <= _rows;)
        {
            var next = y;
            for (var c = 0; c < mask.Columns.Length && next == y; c++)
            {
                if (taken[x + c].IsZero)
                    continue;
                var clash = (taken[x + c] >> y) & mask.Columns[c];
                // The column's lowest cell must come to lie above the highest cell that it meets.
                if (!clash.IsZero)
                    next = y + (int)clash.GetBitLength() - mask.Feet[c];
            }

            if (next == y)
                return y;
            y = next;
        }

        return null;
    }

    /// <summary>Cells that a turned, widened piece touches, by column; its corner is the lower left one of cell (0, 0).</summary>
    private sealed record Mask(int Turn, BigInteger[] Columns, int Height, Point2 Corner)
    {
        /// <summary>Lowest cell of each column.</summary>
        public int[] Feet { get; } = [.. Columns.Select(column => column.IsZero ? 0 : (int)BigInteger.TrailingZeroCount(column))];

        public static Mask Of(NestPiece piece, int turn, double widen, double cell)
        {
            var points = piece.Outline.Select(p => NestPlace.Turned(p, turn)).ToArray();
            var box = points.Aggregate(Box2.Empty, (all, p) => all.Join(p));
            var reach = widen + NestPiece.Flatness;
            var corner = box.Min - new Point2(reach, reach);
            var (columns, rows) = ((int)Math.Ceiling((box.Width + (2 * reach)) / cell),
                (int)Math.Ceiling((box.Height + (2 * reach)) / cell));
            var bits = new BigInteger[Math.Max(1, columns)];
            var spans = new List<double>();
            for (var c = 0; c < bits.Length; c++)
            {
                var (left, right) = (corner.U + (c * cell), corner.U + ((c + 1) * cell));
                spans.Clear();
                Inside(points, (left + right) / 2, spans);
                for (var s = 0; s + 1 < spans.Count; s += 2)
                    Mark(bits, c, (spans[s] - corner.V) / cell, (spans[s + 1] - corner.V) / cell, rows);
                for (var i = 0; i < points.Length; i++)
                {
                    if (Near(points[i], points[(i + 1) % points.Length], left - reach, right + reach) is { } span)
                        Mark(bits, c, (span.Low - reach - corner.V) / cell, (span.High + reach - corner.V) / cell, rows);
                }
            }

            return new(turn, bits, Math.Max(1, rows), corner);
        }

        /// <summary>Where the upright line crosses the outline, in order.</summary>
        private static void Inside(Point2[] points, double u, List<double> crossings)
        {
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                if (a.U <= u != b.U <= u)
                    crossings.Add(a.V + ((u - a.U) / (b.U - a.U) * (b.V - a.V)));
            }

            crossings.Sort();
        }

        /// <summary>Heights of the part of a segment between two upright lines; null where none lies there.</summary>
        private static (double Low, double High)? Near(Point2 a, Point2 b, double left, double right)
        {
            if (Math.Max(a.U, b.U) < left || Math.Min(a.U, b.U) > right)
                return null;
            if (a.U == b.U)
                return (Math.Min(a.V, b.V), Math.Max(a.V, b.V));
            double At(double u) => a.V + ((Math.Clamp(u, Math.Min(a.U, b.U), Math.Max(a.U, b.U)) - a.U) / (b.U - a.U) * (b.V - a.V));
            var (p, q) = (At(left), At(right));
            return (Math.Min(p, q), Math.Max(p, q));
        }

        private static void Mark(BigInteger[] bits, int column, double from, double to, int rows)
        {
            var (low, high) = (Math.Max(0, (int)Math.Floor(from)), Math.Min(rows - 1, (int)Math.Floor(to)));
            if (low <= high)
                bits[column] |= ((BigInteger.One << (high - low + 1)) - 1) << low;
        }
    }
}
