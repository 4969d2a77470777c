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
    public static Interval? Between(SpaceCurve a, SpaceCurve b, double within, double width)
    {
        for (var chords = FirstChords; ; chords *= 2)
        {
            var (one, other) = (a.In(chords), b.In(chords));
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

/// <summary>A curve in space. Keeps the chains of chords that it was asked for, so that one curve is cheap to hold against many.</summary>
public sealed class SpaceCurve(Func<double, Vector3> at, Interval domain)
{
    private readonly Dictionary<int, ChordChain> _chains = [];

    internal ChordChain In(int chords)
    {
        if (!_chains.TryGetValue(chords, out var chain))
            _chains.Add(chords, chain = ChordChain.Of(at, domain, chords));
        return chain;
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
                least = Math.Min(least, Segments.Distance(Points[i], Points[i + 1], other.Points[j], other.Points[j + 1]));
        }

        return least;
    }
}
