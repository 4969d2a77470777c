namespace Vessel.Geometry;

/// <summary>The arc, or line, between two points.</summary>
/// <param name="HalfSweep">
/// From the chord to the direction at the end, radians, positive counter-clockwise; a hair under a quarter turn at
/// most.
/// </param>
/// <remarks>
/// With the chord of length c along +x from the first point, an arc of half sweep h has its centre at
/// (c / 2, c / (2 tan h)). Of a point (x, y) with q = x^2 - c x + y^2 the distance to the left of it is
/// (y c cos h - q sin h) / (c / 2 + |(x - c / 2, y) sin h - (0, c / 2) cos h|), which knows no difference between
/// a line
/// and an arc. It vanishes for tan h = y c / q, as the angle at the circumference says. Derived here.
/// </remarks>
internal readonly record struct ArcSpan(Point2 From, Point2 To, double HalfSweep)
{
    public double Bulge => Math.Abs(HalfSweep) < 1e-9 ? 0 : Math.Tan(HalfSweep / 2);

    /// <summary>
    /// The half sweeps for which a point stays within the tolerance: exact but for the square of tolerance over
    /// chord.
    /// </summary>
    public static (double Low, double High) HalfSweepsNear(Point2 from, Point2 to, Point2 point, double tolerance)
    {
        var (x, y, c) = Local(from, to, point);
        var q = (x * x) - (c * x) + (y * y);
        var through = Math.Atan2(-y * c, -q);
        // How fast the arc moves off the point as its half sweep grows: |y c sin h + q cos h| / c.
        var reach = Math.Sqrt((y * y * c * c) + (q * q)) / c;
        return (through - (tolerance / reach), through + (tolerance / reach));
    }

    /// <summary>mm, of a point beside the arc; one beyond its ends is measured to the whole circle.</summary>
    public double Distance(Point2 point)
    {
        var (x, y, c) = Local(From, To, point);
        var (sin, cos) = Math.SinCos(HalfSweep);
        var (across, along) = ((x - (c / 2)) * sin, (y * sin) - (c / 2 * cos));
        var q = (x * x) - (c * x) + (y * y);
        return Math.Abs((y * c * cos) - (q * sin)) / ((c / 2) + Math.Sqrt((across * across) + (along * along)));
    }

    private static (double X, double Y, double Chord) Local(Point2 from, Point2 to, Point2 point)
    {
        var (chord, arm) = (to - from, point - from);
        var length = chord.Length;
        return (arm.Dot(chord) / length, chord.Cross(arm) / length, length);
    }
}
