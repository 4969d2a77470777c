namespace Vessel.Geometry;

/// <summary>How near two curves in space come to each other, between two bounds.</summary>
/// <remarks>
/// Each curve is a chain of chords and may lie off it by the chain's sag, so the distance of the chains less both sags is
/// a lower bound and their distance with both sags an upper one. Chords are halved until the bounds are near enough.
/// </remarks>
public static class ClosestApproach
{
    private const int FirstChords = 90;
    private const int MostChords = 1440;

    /// <summary>Bounds on the least distance, mm; null where it is surely more than <paramref name="within"/>.</summary>
    /// <param name="width">The bounds are at most so far apart, mm, but where a curve bends too sharply for 1440 chords.</param>
    public static Interval? Between(
        (Func<double, Vector3> At, Interval Domain) a, (Func<double, Vector3> At, Interval Domain) b, double within, double width)
    {
        for (var chords = FirstChords; ; chords *= 2)
        {
            var (one, other) = (ChordChain.Of(a.At, a.Domain, chords), ChordChain.Of(b.At, b.Domain, chords));
            var slack = one.Sag + other.Sag;
            if (one.BoxDistance(other) > within + slack)
                return null;
            var distance = one.Distance(other);
            if (distance - slack > within)
                return null;
            if (2 * slack <= width || chords >= MostChords)
                return new(Math.Max(0, distance - slack), distance + slack);
        }
    }
}

/// <summary>Points along a curve, joined by chords.</summary>
/// <param name="Sag">No point of the curve is further than this from its chord.</param>
internal sealed record ChordChain(Vector3[] Points, double Sag)
{
    // The middle of a stretch stands off its chord the most, but for a change of bend within it.
    private const double Unevenness = 2;

    public static ChordChain Of(Func<double, Vector3> at, Interval domain, int chords)
    {
        var points = new Vector3[chords + 1];
        for (var i = 0; i <= chords; i++)
            points[i] = at(domain.At((double)i / chords));
        var sag = 0.0;
        for (var i = 0; i < chords; i++)
        {
            var middle = at(domain.At((i + 0.5) / chords));
            sag = Math.Max(sag, middle.DistanceToSegment(points[i], points[i + 1]));
        }

        return new(points, Unevenness * sag);
    }

    /// <summary>Between the boxes round both chains, mm.</summary>
    public double BoxDistance(ChordChain other)
    {
        double Gap(Func<Vector3, double> along) => Math.Max(
            0, Math.Max(other.Points.Min(along) - Points.Max(along), Points.Min(along) - other.Points.Max(along)));
        return new Vector3(Gap(p => p.X), Gap(p => p.Y), Gap(p => p.Z)).Length;
    }

    /// <summary>Least distance between a chord of one and a chord of the other, mm.</summary>
    public double Distance(ChordChain other)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i + 1 < Points.Length; i++)
        {
            for (var j = 0; j + 1 < other.Points.Length; j++)
                least = Math.Min(least, Distance(Points[i], Points[i + 1], other.Points[j], other.Points[j + 1]));
        }

        return least;
    }

    /// <summary>
    /// Of two segments: where both feet of the common perpendicular lie inside, its length; else an end's distance is least.
    /// </summary>
    private static double Distance(Vector3 a, Vector3 b, Vector3 c, Vector3 d)
    {
        var ends = Math.Min(
            Math.Min(a.DistanceToSegment(c, d), b.DistanceToSegment(c, d)), Math.Min(c.DistanceToSegment(a, b), d.DistanceToSegment(a, b)));
        var (u, v, w) = (b - a, d - c, c - a);
        var normal = u.Cross(v);
        var square = normal.Dot(normal);
        if (square <= 0)
            return ends;
        var s = w.Cross(v).Dot(normal) / square;
        var t = w.Cross(u).Dot(normal) / square;
        return s is > 0 and < 1 && t is > 0 and < 1 ? Math.Abs(w.Dot(normal)) / Math.Sqrt(square) : ends;
    }
}
