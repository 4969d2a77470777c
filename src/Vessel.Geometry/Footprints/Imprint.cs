using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A section that is swept along an axis towards a body of revolution, and the curve in which its lines first meet it: the
/// footprint of whatever is attached there, seen from the body.
/// </summary>
/// <param name="On">Profile in the frame in which the axis is given.</param>
/// <param name="Axis">Axis whose Z points out of the body; the section lies in its X and Y.</param>
/// <param name="Section">Closed.</param>
public sealed record Imprint(Profile On, Frame3 Axis, LoopPath Section)
{
    private const int Fine = 144;

    /// <summary>Two points of the body on one line are one, mm; the wall of no body is so thin.</summary>
    private const double Near = 1e-3;

    public LineHit? Hit(double t)
    {
        var (x, y) = Section.At(t);
        return On.FirstHit(Axis.ToOuter(new(x, y, 0)), -Axis.Z);
    }

    /// <summary>The meeting point; not a number where the line misses.</summary>
    public Vector3 At(double t) => Hit(t)?.At ?? new(double.NaN, double.NaN, double.NaN);

    /// <summary>Whether a point of the body lies within the footprint.</summary>
    public bool Covers(Vector3 point)
    {
        var (x, y, _) = Axis.ToLocal(point);
        var (at, inside) = (new Point2(x, y), false);
        var outline = Parameters(Fine).Select(Section.At).ToList();
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
            if (a.V > at.V != b.V > at.V && at.U < a.U + ((b.U - a.U) * (at.V - a.V) / (b.V - a.V)))
                inside = !inside;
        }

        // On the far side of the body it lies in the line's way out.
        return inside && On.FirstHit(Axis.ToOuter(new(x, y, 0)), -Axis.Z) is { } hit && (hit.At - point).Length < Near;
    }

    /// <summary>What lines round the section find; null when one of them misses.</summary>
    /// <param name="samples">Number of lines.</param>
    public ImprintPlace? Place(int samples)
    {
        var hits = ImmutableArray.CreateBuilder<LineHit>(samples);
        foreach (var t in Parameters(samples))
        {
            if (Hit(t) is not { } hit)
                return null;
            hits.Add(hit);
        }

        var points = hits.Select(hit => hit.At).ToImmutableArray();
        var reaches = points.Select(point => (point - Axis.Origin).Dot(Axis.Z)).ToList();
        return new(
            points,
            new(hits.Min(hit => hit.Station), hits.Max(hit => hit.Station)),
            new(reaches.Min(), reaches.Max()),
            hits.Min(hit => hit.Normal.Dot(Axis.Z)));
    }

    /// <summary>Even steps, with the section's corners in place of their neighbours.</summary>
    private IEnumerable<double> Parameters(int samples)
    {
        var step = Section.Domain.Length / samples;
        return Enumerable.Range(0, samples)
            .Select(i => Section.Domain.Start + (i * step))
            .Select(t => Section.Breaks.Where(corner => Math.Abs(corner - t) <= step / 2).DefaultIfEmpty(t).First());
    }
}

/// <summary>Where an imprint lies, from sampled lines.</summary>
/// <param name="Points">Round the section.</param>
/// <param name="Stations">Arc lengths of the profile that it takes up, mm.</param>
/// <param name="Reach">Along the axis from its origin, mm.</param>
/// <param name="Steepness">Least sine of the angle under which a line meets the surface; 1 is square to it.</param>
public sealed record ImprintPlace(ImmutableArray<Vector3> Points, Interval Stations, Interval Reach, double Steepness)
{
    /// <summary>Between the closed polygons through both points, mm.</summary>
    public double DistanceTo(ImprintPlace other)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < Points.Length; i++)
        {
            var (a, b) = (Points[i], Points[(i + 1) % Points.Length]);
            for (var j = 0; j < other.Points.Length; j++)
                least = Math.Min(least, Segments.Distance(a, b, other.Points[j], other.Points[(j + 1) % other.Points.Length]));
        }

        return least;
    }
}
