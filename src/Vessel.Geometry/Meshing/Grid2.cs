namespace Vessel.Geometry;

/// <summary>A point on an integer grid, so that orientation and in-circle tests are exact.</summary>
/// <remarks>
/// Coordinates stay below 2^30 apart, hence every product in <see cref="InCircle"/> stays below 2^123 and fits Int128.
/// </remarks>
internal readonly record struct Grid2(long X, long Y)
{
    /// <summary>Sign of the turn a-b-c: positive when it is to the left.</summary>
    public static int Turn(Grid2 a, Grid2 b, Grid2 c)
    {
        var left = (Int128)(b.X - a.X) * (c.Y - a.Y);
        var right = (Int128)(b.Y - a.Y) * (c.X - a.X);
        return left.CompareTo(right);
    }

    /// <summary>Whether d lies strictly inside the circle through a, b, c (counter-clockwise).</summary>
    public static bool InCircle(Grid2 a, Grid2 b, Grid2 c, Grid2 d)
    {
        long ax = a.X - d.X, ay = a.Y - d.Y, bx = b.X - d.X, by = b.Y - d.Y, cx = c.X - d.X, cy = c.Y - d.Y;
        var sum = (Cross(bx, by, cx, cy) * Square(ax, ay))
            + (Cross(cx, cy, ax, ay) * Square(bx, by))
            + (Cross(ax, ay, bx, by) * Square(cx, cy));
        return sum > 0;
    }

    private static Int128 Cross(long ax, long ay, long bx, long by) => ((Int128)ax * by) - ((Int128)ay * bx);

    private static Int128 Square(long x, long y) => ((Int128)x * x) + ((Int128)y * y);
}
