using MathNet.Numerics.Integration;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>The part of a set-in tube that stands inside; its metal takes up room.</summary>
public sealed record StandingTube(PortSite Site)
{
    private const int Turnings = 120;

    /// <summary>Heights over which a head's tube stands upright, from its inner end to its foot; none for a shell's.</summary>
    public Interval Upright => Site.Port.Host == Design.PortHost.Shell
        ? new(double.NegativeInfinity, double.NegativeInfinity)
        : (Site.Frame.ToOuter(new(0, 0, Site.InnerEnd)).Z, Site.Frame.Origin.Z) is var (end, foot) && end < foot
            ? new(end, foot)
            : new(foot, end);

    /// <summary>
    /// Shares of the wall from the bore, with their weights: Gauss in the half turn w of (1 - cos w) / 2, since a level that touches bore or
    /// outside lengthwise, as at a mouth's lowest point, cuts off metal that grows like a root there.
    /// </summary>
    private static readonly (double Share, double Weight)[] _depths = [.. Through()];

    /// <summary>From the tube's end to where each line leaves the room; at a cone's tip the room ends level.</summary>
    private readonly Lazy<Interval[]> _lines = new(() =>
    [
        .. from start in new[] { Site.InnerEnd }
           from depth in _depths
           let r = Site.Port.BoreRadius + (depth.Share * (Site.Port.OuterRadius - Site.Port.BoreRadius))
           from i in Enumerable.Range(0, Turnings)
           let reach = Site.Inside.Reach(r, Phi(i))
           let end = Site.AxisRadius > 0 ? Math.Min(reach, Site.InsideAxis) : reach
           select new Interval(start, Math.Max(start, end)),
    ]);

    /// <summary>
    /// mm3 of metal below a level along a unit direction. Line by line along the tube; between two lines the level and the tube's ends are taken as
    /// straight, and what lies below is exact for that, so that a level that runs along the tube is met as well: to about 1e-4 of the metal.
    /// </summary>
    public double VolumeBelow(double level, Vector3 up)
    {
        var (inner, outer) = (Site.Port.BoreRadius, Site.Port.OuterRadius);
        var slope = Site.Frame.Z.Dot(up);
        // A level along the lines is one that crosses them far away.
        var rise = Math.CopySign(Math.Max(Math.Abs(slope), 1e-9), slope);
        var sum = 0.0;
        for (var d = 0; d < _depths.Length; d++)
        {
            var r = inner + (_depths[d].Share * (outer - inner));
            var weight = r * _depths[d].Weight;
            (double Cut, double Length) At(int i)
            {
                var line = _lines.Value[(d * Turnings) + i];
                var start = Site.Frame.ToOuter(Footprint.OnLine(r, Phi(i), line.Start)).Dot(up);
                // A level at infinity leaves numbers to reckon with.
                return (Math.Clamp((level - start) / rise, -1e15, 1e15), line.Length);
            }

            var before = At(Turnings - 1);
            for (var i = 0; i < Turnings; i++)
            {
                var next = At(i);
                var below = Clamped(before, next);
                sum += weight * (rise > 0 ? below : ((before.Length + next.Length) / 2) - below);
                before = next;
            }
        }

        return sum * (outer - inner) * Turns.Full / Turnings;
    }

    private static IEnumerable<(double Share, double Weight)> Through()
    {
        var rule = new GaussLegendreRule(0, Math.PI, 6);
        var half = Enumerable.Range(0, rule.Order).Select(i => rule.GetWeight(i) * Math.Sin(rule.GetAbscissa(i)) / 2).ToList();
        // Made to add up to one, and to hold the middle by their evenness, so that a ring whole is exact.
        return half.Select((weight, i) => ((1 - Math.Cos(rule.GetAbscissa(i))) / 2, weight / half.Sum()));
    }

    private static double Phi(int turning) => Turns.Full * (turning + 0.5) / Turnings;

    /// <summary>The mean of a cut held between zero and the length, both straight from one line to the next.</summary>
    private static double Clamped((double Cut, double Length) a, (double Cut, double Length) b)
    {
        double Value(double t) => Math.Clamp(a.Cut + (t * (b.Cut - a.Cut)), 0, Math.Max(0, a.Length + (t * (b.Length - a.Length))));
        var (first, second) = (Root(a.Cut, b.Cut), Root(a.Cut - a.Length, b.Cut - b.Length));
        if (first > second)
            (first, second) = (second, first);
        return ((first * (Value(0) + Value(first))) + ((second - first) * (Value(first) + Value(second))) + ((1 - second) * (Value(second) + Value(1)))) / 2;
    }

    /// <summary>Where a straight line from one value to the other passes zero, as a share of the way; zero where it does not.</summary>
    private static double Root(double from, double to) => from < 0 != to < 0 ? from / (from - to) : 0;
}
