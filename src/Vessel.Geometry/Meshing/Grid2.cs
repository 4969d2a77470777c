namespace Vessel.Geometry;

/// <summary>A point on an integer grid, so that orientation and in-circle tests are exact.</summary>
/// <remarks>
/// Coordinates stay below 2^30 apart, hence a product of two stays below 2^60 and fits a long, and one of four below
/// 2^122 and fits Int128.
/// </remarks>
internal readonly record struct Grid2(long X, long Y)
{
    /// <summary>Sign of the turn a-b-c: positive when it is to the left.</summary>
    public static int Turn(Grid2 a, Grid2 b, Grid2 c)
    {
        var left = (b.X - a.X) * (c.Y - a.Y);
        var right = (b.Y - a.Y) * (c.X - a.X);
        return left.CompareTo(right);
    }

    /// <summary>Whether d lies strictly inside the circle through a, b, c (counter-clockwise).</summary>
    public static bool InCircle(Grid2 a, Grid2 b, Grid2 c, Grid2 d)
    {
        long ax = a.X - d.X, ay = a.Y - d.Y, bx = b.X - d.X, by = b.Y - d.Y, cx = c.X - d.X, cy = c.Y - d.Y;
        var (a1, a2) = (Cross(bx, by, cx, cy), Square(ax, ay));
        var (b1, b2) = (Cross(cx, cy, ax, ay), Square(bx, by));
        var (c1, c2) = (Cross(ax, ay, bx, by), Square(cx, cy));

        // In doubles first: each product is off by 3 units of 2^-53 at most and the sum by 2 more.
        double first = (double)a1 * a2, second = (double)b1 * b2, third = (double)c1 * c2;
        var near = first + second + third;
        var doubt = 8 * Math.ScaleB(Math.Abs(first) + Math.Abs(second) + Math.Abs(third), -53);
        if (Math.Abs(near) > doubt)
            return near > 0;
        return ((Int128)a1 * a2) + ((Int128)b1 * b2) + ((Int128)c1 * c2) > 0;
    }

    private static long Cross(long ax, long ay, long bx, long by) => (ax * by) - (ay * bx);

    private static long Square(long x, long y) => (x * x) + (y * y);
}
