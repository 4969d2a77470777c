namespace Vessel.Geometry;

/// <summary>Straight pieces in space.</summary>
public static class Segments
{
    /// <summary>Between the segments a-b and c-d, mm; either may be a point.</summary>
    /// <remarks>
    /// The squared distance is a convex quadratic in the two shares: its free minimum where that lies in the unit square, else the
    /// least of the four sides, each of which is an end against the other segment. Derived here.
    /// </remarks>
    public static double Distance(Vector3 a, Vector3 b, Vector3 c, Vector3 d)
    {
        var (u, v, w) = (b - a, d - c, a - c);
        var (uu, uv, vv, uw, vw) = (u.Dot(u), u.Dot(v), v.Dot(v), u.Dot(w), v.Dot(w));
        var spread = (uu * vv) - (uv * uv);
        if (spread > 1e-12 * uu * vv)
        {
            var (s, t) = (((uv * vw) - (vv * uw)) / spread, ((uu * vw) - (uv * uw)) / spread);
            if (s is >= 0 and <= 1 && t is >= 0 and <= 1)
                return (w + (s * u) - (t * v)).Length;
        }

        return Math.Min(
            Math.Min(a.DistanceToSegment(c, d), b.DistanceToSegment(c, d)),
            Math.Min(c.DistanceToSegment(a, b), d.DistanceToSegment(a, b)));
    }
}
