using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Lines and arcs in place of curves that a cutter does not know.</summary>
/// <remarks>
/// Each smooth piece of a graph curve becomes a chain of biarcs that touch the curve, position and direction, where
/// they meet: no kinks. The chain is found greedily, each biarc as long as the tolerance lets it be, which gives the
/// fewest; the load (share of the tolerance used) is then lowered as far as that number allows, so that the biarcs
/// share the deviation evenly and none is a sliver.
/// The nearest point of such a chain moves without jumps as a point runs along the curve, from the chain's start to
/// its end, so it visits every point of the chain: the greatest distance from curve to chain is also the greatest
/// from chain to curve, and one measure serves both ways. Derived here.
/// </remarks>
public static class ArcFit
{
    // Vertices are written to 1e-6 mm; two that lie further apart than this stay two.
    private const double Distinct = 2e-6;

    // Half of an arc's greatest sweep: a hair over a quarter turn, so that four make a circle, and far from half a
    // turn, so that the nearest point stays unique.
    private const double MostTurn = 0.8;

    // Places per biarc at which the distance is taken. Its four lobes then span twelve each, and the greatest of
    // twelve samples of a sine misses its crest by at most 1 - cos(pi / 24) = 0.9 %, hence the margin.
    private const int Samples = 48;
    private const double Margin = 0.98;
    private const int FinalSamples = 16 * Samples;

    // A biarc's end is sought to this share of its length, which moves its deviation by three times as much.
    private const double EndShare = 1e-3;
    private const int Halvings = 40;
    private const int LoadHalvings = 6;

    /// <summary>
    /// Lines and arcs are kept, arcs of more than half a turn as two; graph curves are fitted.
    /// </summary>
    /// <param name="loop">Closed; longer than 0.01 mm.</param>
    /// <param name="tolerance">Greatest distance allowed, mm.</param>
    /// <exception cref="ArgumentException">A curve is not finite or has a corner that its breaks do not name.</exception>
    public static FittedLoop Fit(Loop2 loop, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var vertices = new List<Bulge>();
        var deviation = 0.0;
        foreach (var edge in loop.Edges)
        {
            switch (edge)
            {
                case Line2 line:
                    vertices.Add(new(line.A, 0));
                    break;
                case Arc2 arc:
                    vertices.AddRange(Keep(arc));
                    break;
                default:
                    deviation = Math.Max(deviation, FitEdge(edge, tolerance, vertices));
                    break;
            }
        }

        return new(WithoutSlivers(vertices), deviation);
    }

    private static IEnumerable<Bulge> Keep(Arc2 arc)
    {
        var count = Math.Abs(arc.Sweep) > Math.PI ? 2 : 1;
        var bulge = Math.Tan(arc.Sweep / count / 4);
        return Enumerable.Range(0, count).Select(i => new Bulge(arc.At((double)i / count), bulge));
    }

    private static double FitEdge(Curve2 curve, double tolerance, List<Bulge> vertices)
    {
        var deviation = 0.0;
        foreach (var piece in CurveMeasures.Pieces(curve))
        {
            foreach (var (span, biarc) in FewestEvenly(new(curve, piece), tolerance * Margin))
            {
                vertices.AddRange(biarc.Vertices);
                deviation = Math.Max(deviation, Distance(curve, span, biarc, FinalSamples, double.PositiveInfinity));
            }
        }

        return deviation;
    }

    private static List<(Interval Span, Biarc Biarc)> FewestEvenly(SmoothPiece piece, double tolerance)
    {
        var best = Greedy(piece, tolerance, 1, int.MaxValue)!;
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < LoadHalvings && best.Count > 1; i++)
        {
            var load = (low + high) / 2;
            if (Greedy(piece, tolerance, load, best.Count) is { } lighter)
                (best, high) = (lighter, load);
            else
                low = load;
        }

        return best;
    }

    // Null when more than so many would be needed.
    private static List<(Interval Span, Biarc Biarc)>? Greedy(SmoothPiece piece, double tolerance, double load, int most)
    {
        var chain = new List<(Interval Span, Biarc Biarc)>();
        for (var at = piece.Domain.Start; at < piece.Domain.End; at = chain[^1].Span.End)
        {
            if (chain.Count == most)
                return null;
            chain.Add(Longest(piece, at, tolerance, load));
        }

        return chain;
    }

    private static (Interval Span, Biarc Biarc) Longest(SmoothPiece piece, double start, double tolerance, double load)
    {
        var (good, bad) = (start, piece.Domain.End);
        if (Try(piece, new(start, bad), tolerance, load) is { } whole)
            return (new(start, bad), whole);
        Biarc? best = null;
        for (var i = 0; i < Halvings && bad - good > EndShare * (good - start); i++)
        {
            var end = (good + bad) / 2;
            if (Try(piece, new(start, end), tolerance, load) is { } longer)
                (good, best) = (end, longer);
            else
                bad = end;
        }

        return best is null
            ? throw new ArgumentException($"the curve has a corner or no value near parameter {start}, which its breaks do not name")
            : (new(start, good), best);
    }

    private static Biarc? Try(SmoothPiece piece, Interval span, double tolerance, double load)
    {
        var biarc = Biarc.Through(
            piece.Curve.At(span.Start), piece.Direction(span.Start), piece.Curve.At(span.End), piece.Direction(span.End));
        if (biarc is null || biarc.Turn > MostTurn * load)
            return null;

        // A long span may hide a wave between few samples, so their number grows with the share of the piece.
        var samples = Samples + (int)(8 * Samples * span.Length / piece.Domain.Length);
        var most = tolerance * load;
        return Distance(piece.Curve, span, biarc, samples, most) <= most ? biarc : null;
    }

    // The search ends once the distance exceeds the most that is of interest.
    private static double Distance(Curve2 curve, Interval span, Biarc biarc, int samples, double most)
    {
        var greatest = 0.0;
        for (var i = 1; i < samples && greatest <= most; i++)
            greatest = Math.Max(greatest, biarc.Distance(curve.At(span.At((double)i / samples))));
        return greatest;
    }

    private static ImmutableArray<Bulge> WithoutSlivers(List<Bulge> vertices)
    {
        var kept = vertices
            .Where((vertex, i) => (vertices[(i + 1) % vertices.Count].At - vertex.At).Length > Distinct)
            .ToImmutableArray();
        return kept.Length >= 2 ? kept : throw new ArgumentException("the loop is too small to be cut");
    }

    /// <summary>A curve between two breaks, with directions that are those of its inside.</summary>
    private sealed record SmoothPiece(Curve2 Curve, Interval Domain)
    {
        // At a break the slope is that of either side, or has no value: look a hair inside.
        public Point2 Direction(double t)
        {
            var hair = 1e-9 * Domain.Length;
            var slope = Curve.Slope(Math.Clamp(t, Domain.Start + hair, Domain.End - hair));
            return slope.Unit();
        }
    }
}
