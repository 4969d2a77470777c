namespace Vessel.Geometry;

/// <summary>Arcs that stand for a smooth stretch of a curve and meet on it, without corners.</summary>
/// <remarks>
/// The number is found by <see cref="ArcSearch"/> from stations along the curve, a dozen to each arc of the
/// longest that
/// could be, so that few arcs are lost by meeting at stations only. Then the load (share of the tolerance used) is
/// lowered
/// as far as that number allows, so that the arcs share the deviation; not where a wide search was needed, which takes long.
/// </remarks>
/// <param name="Deviation">Greatest distance between chain and curve, mm.</param>
internal sealed record ArcChain(IReadOnlyList<ArcSpan> Spans, double Deviation)
{
    // Half of an arc's greatest sweep: a hair under a quarter turn, so that every bulge is below one.
    private const double MostTurn = 1.57;

    // Places per longest arc at which the distance is taken. Its three lobes then span sixteen each, and the
    // greatest of
    // sixteen samples of a sine misses its crest by at most 1 - cos(pi / 32) = 0.5 %, hence the margin.
    private const int Samples = 48;
    private const double Margin = 0.98;
    private const int FinalSamples = 768;

    private const int StationsPerArc = 12;

    // The curve turns no more than this from station to station, radians, unless it does so within a hair.
    private const double MostBetween = 0.25;
    private const double LeastShare = 1e-9;

    // The longest arc's end is sought to this share of its length.
    private const double EndShare = 0.01;

    // Chains that lag behind the foremost by more than so many stations are let go; more are kept where that was too few,
    // as at a sharp turn, where many stations crowd.
    private const int StationsAbreast = 2 * StationsPerArc;
    private const int MostAbreast = 10 * StationsPerArc;
    private const int Halvings = 40;

    // A chain of more arcs than so many times those that follow each other whatever their corners is sought again, more widely.
    private const double Dear = 1.15;
    private const int LoadHalvings = 5;
    private const int Attempts = 5;

    /// <param name="smooth">Where the chain must keep to the curve's own direction.</param>
    public static ArcChain Fewest(SmoothStretch stretch, double tolerance, SmoothEnds smooth)
    {
        var aim = tolerance * Margin;
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            var (places, greedy) = Places(stretch, aim);
            Func<bool, ArcSearch> Search(int abreast) => wide => new(stretch, places, smooth, MostTurn, abreast, wide);
            var chain = Evenly(Search(StationsAbreast), aim, greedy) ?? Evenly(Search(MostAbreast), aim, greedy) ?? OneByOne(stretch, aim);
            var deviation = chain.Max(leg => Distance(stretch.Curve, leg.Domain, leg.Span));
            if (deviation <= tolerance)
                return new(chain.ConvertAll(leg => leg.Span), deviation);
            aim *= 0.8 * tolerance / deviation;
        }

        throw new ArgumentException("the curve leaves every chain of arcs between its stations");
    }

    private static List<(Interval Domain, ArcSpan Span)>? Evenly(Func<bool, ArcSearch> searchOf, double tolerance, int greedy)
    {
        var search = searchOf(false);
        var best = search.Fewest(tolerance, int.MaxValue);
        if (best?.Count > Dear * greedy && searchOf(true).Fewest(tolerance, best.Count - 1) is { } fewer)
            return fewer;
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < LoadHalvings && best is { Count: > 1 }; i++)
        {
            var load = (low + high) / 2;
            if (search.Any(load * tolerance, best.Count) is { } lighter)
                (best, high) = (lighter, load);
            else
                low = load;
        }

        return best;
    }

    /// <summary>
    /// The places where arcs may meet, and some to look at between them: evenly along each of the longest arcs one after the other, and
    /// the number of those.
    /// </summary>
    private static (List<double> Places, int Greedy) Places(SmoothStretch stretch, double tolerance)
    {
        var domain = stretch.Domain;
        var (places, greedy) = (new List<double> { domain.Start }, 0);
        for (; places[^1] < domain.End; greedy++)
        {
            var (start, end) = (places[^1], Longest(stretch, places[^1], tolerance));
            for (var i = 1; i <= StationsPerArc; i++)
            {
                var from = places[^1];
                var to = i == StationsPerArc ? end : start + ((end - start) * i / StationsPerArc);
                AddStation(stretch, new(from, to), places);
            }
        }

        return (places, greedy);
    }

    /// <summary>More than one where the curve turns sharply.</summary>
    private static void AddStation(SmoothStretch stretch, Interval step, List<double> places)
    {
        var (a, b) = (stretch.DirectionAt(step.Start), stretch.DirectionAt(step.End));
        if (Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))) > MostBetween && step.Length > LeastShare * stretch.Domain.Length)
        {
            AddStation(stretch, new(step.Start, step.At(0.5)), places);
            AddStation(stretch, new(step.At(0.5), step.End), places);
            return;
        }

        for (var i = 1; i < ArcSearch.Between; i++)
            places.Add(step.At((double)i / ArcSearch.Between));
        places.Add(step.End);
    }

    private static double Longest(SmoothStretch stretch, double start, double tolerance)
    {
        var (good, bad) = (start, stretch.Domain.End);
        if (HalfSweeps(stretch, new(start, bad), tolerance) is not null)
            return bad;
        for (var i = 0; i < Halvings && bad - good > EndShare * (good - start); i++)
        {
            var end = (good + bad) / 2;
            if (HalfSweeps(stretch, new(start, end), tolerance) is not null)
                good = end;
            else
                bad = end;
        }

        return good > start ? good : throw new ArgumentException($"the curve has no value near parameter {start}");
    }

    /// <summary>The longest arcs one after the other, whatever corners they make: for a curve that turns too sharply.</summary>
    private static List<(Interval Domain, ArcSpan Span)> OneByOne(SmoothStretch stretch, double tolerance)
    {
        var chain = new List<(Interval Domain, ArcSpan Span)>();
        for (var start = stretch.Domain.Start; start < stretch.Domain.End; start = chain[^1].Domain.End)
        {
            var domain = new Interval(start, Longest(stretch, start, tolerance));
            var (low, high) = HalfSweeps(stretch, domain, tolerance)!.Value;
            chain.Add((domain, new(stretch.Curve.At(domain.Start), stretch.Curve.At(domain.End), (low + high) / 2)));
        }

        return chain;
    }

    /// <summary>The half sweeps of the arcs that follow the curve so far; null when none does.</summary>
    private static (double Low, double High)? HalfSweeps(SmoothStretch stretch, Interval span, double tolerance)
    {
        // A long span may hide a wave between few samples, so their number grows with the share of the stretch.
        var samples = Samples + (int)(8 * Samples * span.Length / stretch.Domain.Length);
        var (from, to) = (stretch.Curve.At(span.Start), stretch.Curve.At(span.End));
        var (low, high) = (-MostTurn, MostTurn);
        for (var i = 1; i < samples; i++)
        {
            var near = ArcSpan.HalfSweepsNear(from, to, stretch.Curve.At(span.At((double)i / samples)), tolerance);
            (low, high) = (Math.Max(low, near.Low), Math.Min(high, near.High));
            if (!(low <= high))
                return null;
        }

        return (low, high);
    }

    private static double Distance(Curve2 curve, Interval domain, ArcSpan span)
    {
        var greatest = 0.0;
        for (var i = 1; i < FinalSamples; i++)
            greatest = Math.Max(greatest, span.Distance(curve.At(domain.At((double)i / FinalSamples))));
        return greatest;
    }
}
