using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Lines and arcs in place of curves that a cutter does not know.</summary>
/// <remarks>
/// Each smooth stretch of a graph curve becomes an <see cref="ArcChain"/>: as few arcs as there can be of those that
/// meet within the tolerance of the curve and turn no corner there. The nearest point of such a chain moves without jumps as a point
/// runs along the
/// curve, from the chain's start to its end, so it visits every point of the chain: the greatest distance from
/// curve to
/// chain is also the greatest from chain to curve, and one measure serves both ways. Derived here.
/// </remarks>
public static class ArcFit
{
    // Vertices are written to 1e-6 mm; two that lie further apart than this stay two.
    private const double Distinct = 2e-6;

    // Below this turn, radians, a named break is none; up to the second a chain keeps to the curve's own directions.
    private const double Smooth = 5e-4;
    private const double PlainCorner = 0.035;

    /// <summary>
    /// Lines and arcs are kept, arcs of more than half a turn as two; graph curves are fitted.
    /// </summary>
    /// <param name="loop">Closed; longer than 0.01 mm.</param>
    /// <param name="tolerance">Greatest distance allowed, mm.</param>
    /// <exception cref="ArgumentException">A curve is not finite.</exception>
    public static FittedLoop Fit(Loop2 loop, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var stretches = loop.Edges.SelectMany(Stretches).ToList();
        var vertices = new List<Bulge>();
        var deviation = 0.0;
        for (var i = 0; i < stretches.Count; i++)
        {
            var (before, here, after) = (stretches[^1], stretches[i], stretches[(i + 1) % stretches.Count]);
            before = i > 0 ? stretches[i - 1] : before;
            switch (here.Curve)
            {
                case Line2 line:
                    vertices.Add(new(line.A, 0));
                    break;
                case Arc2 arc:
                    vertices.AddRange(Keep(arc));
                    break;
                default:
                    var chain = ArcChain.Fewest(here, tolerance, new(
                        Turn(before, here) < PlainCorner, Turn(here, after) < PlainCorner,
                        stretches.Count == 1 && Turn(here, here) < Smooth));
                    vertices.AddRange(chain.Spans.Select(span => new Bulge(span.From, span.Bulge)));
                    deviation = Math.Max(deviation, chain.Deviation);
                    break;
            }
        }

        return new(WithoutSlivers(vertices), deviation);
    }

    /// <summary>Lines and arcs that keep within the tolerance of one curve, which may be open.</summary>
    /// <param name="curve">Longer than 0.01 mm.</param>
    /// <param name="tolerance">Greatest distance allowed, mm.</param>
    /// <exception cref="ArgumentException">The curve is not finite.</exception>
    public static FittedPath Fit(Curve2 curve, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        if ((curve.End - curve.Start).Length < Distinct)
        {
            var loop = Fit(new Loop2([curve]), tolerance);
            return new(loop.Vertices, true, loop.Deviation);
        }

        var stretches = curve is GraphCurve2 ? Stretches(curve).ToList() : [];
        var chains = stretches.Select((here, i) => ArcChain.Fewest(here, tolerance, new(
            i > 0 && Turn(stretches[i - 1], here) < PlainCorner,
            i < stretches.Count - 1 && Turn(here, stretches[i + 1]) < PlainCorner,
            false))).ToList();
        return new(
            [
                .. curve is Arc2 arc ? Keep(arc) : [],
                .. curve is Line2 ? new[] { new Bulge(curve.Start, 0) } : [],
                .. chains.SelectMany(chain => chain.Spans).Select(span => new Bulge(span.From, span.Bulge)),
                new(curve.End, 0),
            ],
            false,
            chains.Select(chain => chain.Deviation).DefaultIfEmpty().Max());
    }

    private static IEnumerable<Bulge> Keep(Arc2 arc)
    {
        var count = Math.Abs(arc.Sweep) > Math.PI ? 2 : 1;
        var bulge = Math.Tan(arc.Sweep / count / 4);
        return Enumerable.Range(0, count).Select(i => new Bulge(arc.At((double)i / count), bulge));
    }

    /// <summary>The curve between its corners.</summary>
    private static IEnumerable<SmoothStretch> Stretches(Curve2 curve)
    {
        SmoothStretch? open = null;
        foreach (var piece in CurveMeasures.Pieces(curve))
        {
            var next = new SmoothStretch(curve, piece);
            if (open is not null && Turn(open, next) >= Smooth)
            {
                yield return open;
                open = null;
            }

            open = open is null ? next : new(curve, new(open.Domain.Start, piece.End));
        }

        yield return open!;
    }

    private static double Turn(SmoothStretch before, SmoothStretch after)
    {
        var (a, b) = (before.EndDirection, after.StartDirection);
        return Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
    }

    private static ImmutableArray<Bulge> WithoutSlivers(List<Bulge> vertices)
    {
        var kept = vertices
            .Where((vertex, i) => (vertices[(i + 1) % vertices.Count].At - vertex.At).Length > Distinct)
            .ToImmutableArray();
        return kept.Length >= 2 ? kept : throw new ArgumentException("the loop is too small to be cut");
    }
}

/// <summary>A curve, or as much of it as has no corner, with directions that are those of its inside.</summary>
internal sealed record SmoothStretch(Curve2 Curve, Interval Domain)
{
    // At a corner the slope is that of either side, or has no value: look a hair inside.
    private double Hair => 1e-9 * Domain.Length;

    public Point2 StartDirection => DirectionAt(Domain.Start);

    public Point2 EndDirection => DirectionAt(Domain.End);

    public Point2 DirectionAt(double t) => Curve.Slope(Math.Clamp(t, Domain.Start + Hair, Domain.End - Hair)).Unit();
}
