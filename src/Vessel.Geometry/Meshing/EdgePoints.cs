using System.Collections.Immutable;
using MathNet.Numerics.RootFinding;

namespace Vessel.Geometry;

/// <summary>
/// Chooses the parameters at which edges become vertices: as evenly in need as the curves allow, with the demanded
/// ones among them.
/// </summary>
internal static class EdgePoints
{
    /// <summary>Samples a piece to see how it turns; the check at the end catches what they miss.</summary>
    private const int Samples = 96;

    /// <summary>Parameters closer than this share of the domain are one.</summary>
    private const double Same = 1e-9;

    /// <summary>
    /// Ascending parameters for a group of edges that walls tie together: all get the same. The first is the domain's
    /// start and the last its end, which is the same point.
    /// </summary>
    public static ImmutableArray<double> Choose(
        IReadOnlyList<Edge3> group, IEnumerable<double> demanded, Accuracy accuracy)
    {
        var domain = group[0].Domain;
        var leastPieces = group[0].Ends is null ? group.Max(edge => edge.LeastPieces) : 1;
        var anchors = Anchors(domain, demanded.Concat(group.SelectMany(edge => edge.Breaks)));
        var chosen = new List<double> { domain.Start };
        for (var i = 0; i + 1 < anchors.Count; i++)
        {
            var least = (int)Math.Ceiling(leastPieces * (anchors[i + 1] - anchors[i]) / domain.Length);
            Divide(group, new(anchors[i], anchors[i + 1]), least, accuracy, chosen);
        }

        return Refined(group, chosen, accuracy);
    }

    private static List<double> Anchors(Interval domain, IEnumerable<double> wanted)
    {
        var anchors = new List<double> { domain.Start };
        foreach (var t in wanted.Order())
        {
            if (t - anchors[^1] > Same * domain.Length && domain.End - t > Same * domain.Length)
                anchors.Add(t);
        }

        anchors.Add(domain.End);
        return anchors;
    }

    /// <summary>
    /// Adds the ends of equally needy pieces. The need of dt is the larger of sqrt(|P''| / 8 chord) dt (sagitta of a
    /// parabola) and the turn of the tangent over the greatest angle.
    /// </summary>
    private static void Divide(
        IReadOnlyList<Edge3> group, Interval piece, int least, Accuracy accuracy, List<double> chosen)
    {
        var step = piece.Length / Samples;
        var need = new double[Samples + 1];
        for (var i = 0; i < Samples; i++)
        {
            var from = piece.At((double)i / Samples);
            need[i + 1] = need[i] + group.Max(edge => Need(edge, from, step, accuracy));
        }

        var pieces = Math.Max(least, (int)Math.Ceiling(need[Samples] - 1e-9));
        var at = 0;
        for (var i = 1; i < pieces; i++)
        {
            var wanted = need[Samples] == 0 ? 0 : need[Samples] * i / pieces;
            if (need[Samples] == 0)
            {
                chosen.Add(piece.At((double)i / pieces));
                continue;
            }

            while (need[at + 1] < wanted)
                at++;
            var share = (wanted - need[at]) / (need[at + 1] - need[at]);
            chosen.Add(piece.At((at + share) / Samples));
        }

        chosen.Add(piece.End);
    }

    private static double Need(Edge3 edge, double from, double step, Accuracy accuracy)
    {
        var (a, b, c) = (edge.At(from), edge.At(from + (step / 2)), edge.At(from + step));
        var (first, second) = (b - a, c - b);
        var sagitta = b.DistanceToSegment(a, c);
        var turn = Math.Atan2(first.Cross(second).Length, first.Dot(second));
        // Two half steps turn by half of what the whole step does.
        return Math.Max(Math.Sqrt(sagitta / accuracy.Chord), 2 * turn / accuracy.Angle);
    }

    /// <summary>Halves the pieces that still stand off by more than the chord.</summary>
    private static ImmutableArray<double> Refined(IReadOnlyList<Edge3> group, List<double> chosen, Accuracy accuracy)
    {
        var refined = ImmutableArray.CreateBuilder<double>(chosen.Count);
        refined.Add(chosen[0]);
        var open = new Stack<(double From, double To, int Depth)>();
        for (var i = chosen.Count - 1; i > 0; i--)
            open.Push((chosen[i - 1], chosen[i], 0));
        while (open.TryPop(out var piece))
        {
            if (piece.Depth < 12 && group.Any(edge => StandsOff(edge, piece.From, piece.To, accuracy.Chord)))
            {
                var middle = (piece.From + piece.To) / 2;
                open.Push((middle, piece.To, piece.Depth + 1));
                open.Push((piece.From, middle, piece.Depth + 1));
            }
            else
            {
                refined.Add(piece.To);
            }
        }

        return refined.ToImmutable();
    }

    private static bool StandsOff(Edge3 edge, double from, double to, double chord)
    {
        var (a, b) = (edge.At(from), edge.At(to));
        // Equal need gives pieces at the limit itself; rounding may not push them over it.
        var limit = chord * (1 + 1e-6);
        double Off(double share) => edge.At(from + (share * (to - from))).DistanceToSegment(a, b);
        var (first, middle, last) = (Off(0.25), Off(0.5), Off(0.75));
        if (first > limit || middle > limit || last > limit)
            return true;
        // The furthest place may lie between those looked at: the top of the parabola through the furthest and its neighbours.
        return first > middle ? Top(0, first, middle) > limit : last > middle ? Top(middle, last, 0) > limit
            : Top(first, middle, last) > limit;
    }

    /// <summary>Greatest value of the parabola through three values at even steps, of which the second is the greatest.</summary>
    private static double Top(double before, double at, double after)
    {
        var bend = (2 * at) - before - after;
        return bend > 0 ? at + ((after - before) * (after - before) / (8 * bend)) : at;
    }

    /// <summary>
    /// Parameters where the image of a bound crosses u = <paramref name="cut"/>, counted round the period, or a crease. One that
    /// only grazes a crease does not: two vertices a hair apart would make needles of the facets there.
    /// </summary>
    public static IEnumerable<double> Crossings(Bound bound, double? cut, double period, ImmutableArray<Crease> creases)
    {
        if (cut is null && creases.IsEmpty)
            yield break;
        // Open edges are short and plain.
        var steps = bound.Edge.Ends is null ? 512 : 64;
        var samples = Enumerable.Range(0, steps + 1)
            .Select(i => bound.Edge.Domain.At((double)i / steps))
            .Select(t => (T: t, Image: bound.Image(t)))
            .ToList();
        if (cut is { } line)
        {
            // Opposite signs near half a period are the far side, not a crossing.
            foreach (var t in Crossings(bound, samples, image => (image.U - line) / period is var turned ? turned - Math.Round(turned)
                : 0, 0.5))
                yield return t;
        }

        foreach (var crease in creases)
        {
            var all = Crossings(bound, samples, crease.Beyond, double.PositiveInfinity).ToList();
            for (var i = 0; i < all.Count; i++)
            {
                if (i + 1 < all.Count && crease.Holds(bound.Image((all[i] + all[i + 1]) / 2)))
                    i++;
                else
                    yield return all[i];
            }
        }
    }

    private static IEnumerable<double> Crossings(
        Bound bound, List<(double T, Point2 Image)> samples, Func<Point2, double> beyond, double jump)
    {
        for (var i = 0; i + 1 < samples.Count; i++)
        {
            var (a, b) = (beyond(samples[i].Image), beyond(samples[i + 1].Image));
            if (a == 0)
                yield return samples[i].T;
            else if (a * b < 0 && Math.Abs(a - b) < jump)
                yield return Brent.FindRoot(t => beyond(bound.Image(t)), samples[i].T, samples[i + 1].T, 1e-15, 200);
        }
    }
}
