namespace Vessel.Geometry;

/// <summary>Distance between convex bodies.</summary>
/// <remarks>
/// Gilbert, Johnson and Keerthi 1988, "A fast procedure for computing the distance between complex objects in
/// three-dimensional space": the point nearest to the origin is sought in the set of all differences. With v the nearest point
/// known so far and w that furthest against it, the true distance lies between v . w / |v| and |v|.
/// </remarks>
public static class ConvexDistance
{
    /// <summary>Least bracket that is asked for where no other is, mm.</summary>
    public const double Usual = 1e-3;

    private const int MostSteps = 100;

    /// <summary>Holds the distance, mm; zero at both ends where the bodies meet.</summary>
    /// <param name="bracket">Greatest difference between the two ends.</param>
    public static Interval Between(ConvexBody a, ConvexBody b, double bracket = Usual)
    {
        var corners = new List<Vector3>(4) { a.Furthest(Vector3.UnitX) - b.Furthest(-Vector3.UnitX) };
        var (nearest, low) = (corners[0], 0.0);
        for (var step = 0; step < MostSteps; step++)
        {
            var high = nearest.Length;
            if (high <= bracket / 2)
                return new(0, high);
            var next = a.Furthest(-nearest) - b.Furthest(nearest);
            // Rounding may leave a hair between what is known from either side.
            low = Math.Min(high, Math.Max(low, nearest.Dot(next) / high));
            if (high - low <= bracket || corners.Contains(next))
                return new(low, high);
            corners.Add(next);
            nearest = Nearest(corners);
            if (corners.Count == 4)
                return new(0, 0);
        }

        return new(Math.Min(low, nearest.Length), nearest.Length);
    }

    /// <summary>
    /// The point of the simplex nearest to the origin; corners that have no share in it are taken out, so that four are left only
    /// when the origin lies inside.
    /// </summary>
    private static Vector3 Nearest(List<Vector3> corners)
    {
        var (best, length, kept) = (corners[0], double.PositiveInfinity, 0);
        for (var subset = 1; subset < 1 << corners.Count; subset++)
        {
            if (Foot(corners, subset) is { } foot && foot.Length < length)
                (best, length, kept) = (foot, foot.Length, subset);
        }

        for (var i = corners.Count - 1; i >= 0; i--)
        {
            if ((kept & (1 << i)) == 0)
                corners.RemoveAt(i);
        }

        return best;
    }

    /// <summary>Foot of the origin on the flat through some corners; null when it lies outside them.</summary>
    private static Vector3? Foot(List<Vector3> corners, int subset)
    {
        Span<int> of = stackalloc int[4];
        var count = 0;
        for (var i = 0; i < corners.Count; i++)
        {
            if ((subset & (1 << i)) != 0)
                of[count++] = i;
        }

        var a = corners[of[0]];
        if (count == 1)
            return a;
        var u = corners[of[1]] - a;
        if (count == 2)
            return Within(-a.Dot(u) / u.Dot(u)) is { } share ? a + (share * u) : null;
        var v = corners[of[2]] - a;
        if (count == 3)
            return OnTriangle(a, u, v);
        var w = corners[of[3]] - a;
        var space = u.Dot(v.Cross(w));
        if (Math.Abs(space) <= 1e-14 * u.Length * v.Length * w.Length)
            return null;
        var (p, q, r) = (-a.Dot(v.Cross(w)) / space, -a.Dot(w.Cross(u)) / space, -a.Dot(u.Cross(v)) / space);
        return p >= 0 && q >= 0 && r >= 0 && p + q + r <= 1 ? Vector3.Zero : null;
    }

    private static Vector3? OnTriangle(Vector3 a, Vector3 u, Vector3 v)
    {
        var normal = u.Cross(v);
        var square = normal.Dot(normal);
        if (square <= 1e-24 * u.Dot(u) * v.Dot(v))
            return null;
        var (p, q) = (-a.Cross(v).Dot(normal) / square, -u.Cross(a).Dot(normal) / square);
        return p >= 0 && q >= 0 && p + q <= 1 ? a.Dot(normal) / square * normal : null;
    }

    private static double? Within(double share) => share is >= 0 and <= 1 ? share : null;
}
