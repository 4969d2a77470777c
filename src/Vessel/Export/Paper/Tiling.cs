using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>
/// A drawing cut into windows of equal size that overlap. The cores meet without overlap and together are the whole room;
/// beyond its core each window shows half of the overlap on every side where a neighbour lies.
/// </summary>
/// <param name="Columns">Side by side.</param>
/// <param name="Rows">One above the other; the first is the highest.</param>
internal sealed record Tiling(Box2 Room, int Columns, int Rows, double Width, double Height)
{
    public const double Overlap = 10;

    /// <summary>Count of the sheets: a drawing miles long takes more than an int holds.</summary>
    public long Count => (long)Columns * Rows;

    /// <param name="drawing">Is put into the middle of the room.</param>
    /// <param name="window">What fits one page.</param>
    public static Tiling Of(Box2 drawing, Box2 window)
    {
        var (columns, width) = Along(drawing.Width, window.Width);
        var (rows, height) = Along(drawing.Height, window.Height);
        var middle = 0.5 * (drawing.Min + drawing.Max);
        var half = new Point2(width / 2, height / 2);
        return new(new(middle - half, middle + half), columns, rows, window.Width, window.Height);
    }

    public IEnumerable<Tile> Tiles()
    {
        var number = 0;
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var window = new Point2(Room.Min.U + (column * (Width - Overlap)), Room.Max.V - Height - (row * (Height - Overlap)));
                yield return new(++number, column, row, this, new(window, window + new Point2(Width, Height)));
            }
        }
    }

    // A hair over a whole page is rounding.
    private static (int Count, double Length) Along(double length, double window)
    {
        var count = (int)Math.Max(1, Math.Ceiling(Math.Min(1e6, (length - Overlap) / (window - Overlap)) - 1e-9));
        return (count, (count * (window - Overlap)) + Overlap);
    }
}

/// <param name="Number">Number, counted from 1, row by row from the upper left.</param>
internal sealed record Tile(int Number, int Column, int Row, Tiling Of, Box2 Window)
{
    public int? Left => Column > 0 ? Number - 1 : null;

    public int? Right => Column + 1 < Of.Columns ? Number + 1 : null;

    public int? Above => Row > 0 ? Number - Of.Columns : null;

    public int? Below => Row + 1 < Of.Rows ? Number + Of.Columns : null;

    public Box2 Core => new(
        Window.Min + new Point2(In(Left), In(Below)),
        Window.Max - new Point2(In(Right), In(Above)));

    private static double In(int? neighbour) => neighbour is null ? 0 : Tiling.Overlap / 2;
}
