using MathNet.Numerics.Integration;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>The part of a set-in tube that stands inside; its metal takes up room.</summary>
public sealed class StandingTube(PortSite site)
{
    public PortSite Site { get; } = site;

    private const int Turnings = 120;

    /// <summary>Heights over which a head's tube stands upright, from its inner end to its foot; none for a shell's.</summary>
    public Interval Upright => Site.Port.Host == PortHost.Shell
        ? new(double.NegativeInfinity, double.NegativeInfinity)
        : (Site.Frame.ToOuter(new(0, 0, Site.InnerEnd)).Z, Site.Frame.Origin.Z) is var (end, foot) && end < foot
            ? new(end, foot)
            : new(foot, end);

    /// <summary>
    /// Shares of the wall from the bore, with their weights: Gauss in the half turn w of (1 - cos w) / 2, since a level that touches bore
    /// or
    /// outside lengthwise, as at a mouth's lowest point, cuts off metal that grows like a root there.
    /// </summary>
    private static readonly (double Share, double Weight)[] _depths = [.. Through()];

    private static readonly (double Sin, double Cos)[] _turns = [.. Enumerable.Range(0, Turnings).Select(i => Turned(Phi(i)))];

    /// <summary>Lines from the tube's end to where each line leaves the room; at a cone's tip the room ends level.</summary>
    private readonly Lazy<Interval[]> _lines = new(() =>
    [
        .. from start in new[] { site.InnerEnd }
           from depth in _depths
           let r = site.Port.BoreRadius + (depth.Share * (site.Port.OuterRadius - site.Port.BoreRadius))
           from i in Enumerable.Range(0, Turnings)
           let reach = site.Inside.Reach(r, Phi(i))
           let end = site.AxisRadius > 0 ? Math.Min(reach, site.InsideAxis) : reach
           select new Interval(start, Math.Max(start, end)),
    ]);

    /// <summary>
    /// Strips of all windows: angle, lower end along the axis and length of either side, and how much of the turn they take up.
    /// </summary>
    private readonly Lazy<((double Phi, double Low, double Length) From, (double Phi, double Low, double Length) To,
        double Turn)[]> _windows = new(() =>
    [
        .. from row in site.Port.Windows
           let strips = new WindowRow(row, site.InnerEnd + row.Up).Strips().ToList()
           from i in Enumerable.Range(0, row.Count)
           from strip in strips
           let middle = row.Angle + (Turns.Full * i / row.Count)
           let left = Side(site, row, middle, strip.From)
           let right = Side(site, row, middle, strip.To)
           select (left, right, strip.Share * row.AreaOfOne / site.Port.OuterRadius / ((left.Length + right.Length) / 2)),
    ]);

    /// <summary>
    /// mm3 of metal below a level along a unit direction. Line by line along the tube; between two lines the level and the tube's ends are
    /// taken as
    /// straight, and what lies below is exact for that, so that a level that runs along the tube is met as well: to about 1e-4 of the
    /// metal.
    /// </summary>
    public double VolumeBelow(double level, Vector3 up)
    {
        var (inner, outer) = (Site.Port.BoreRadius, Site.Port.OuterRadius);
        var slope = Site.Frame.Z.Dot(up);
        // A level along the lines is one that crosses them far away.
        var rise = Math.CopySign(Math.Max(Math.Abs(slope), 1e-9), slope);
        var (sum, lines) = (0.0, _lines.Value);
        for (var d = 0; d < _depths.Length; d++)
        {
            var r = inner + (_depths[d].Share * (outer - inner));
            var weight = r * _depths[d].Weight;
            (double Cut, double Length) At((double Sin, double Cos) turn, double from, double length)
            {
                var start = Site.Frame.ToOuter(new(r * turn.Cos, r * turn.Sin, from)).Dot(up);
                // A level at infinity leaves numbers to reckon with.
                return (Math.Clamp((level - start) / rise, -1e15, 1e15), length);
            }

            double Below((double Cut, double Length) a, (double Cut, double Length) b) =>
                rise > 0 ? Clamped(a, b) : ((a.Length + b.Length) / 2) - Clamped(a, b);
            (double Cut, double Length) Line(int i) =>
                lines[(d * Turnings) + i] is var line ? At(_turns[i], line.Start, line.Length) : default;

            var before = Line(Turnings - 1);
            for (var i = 0; i < Turnings; i++)
            {
                var next = Line(i);
                sum += weight * Turns.Full / Turnings * Below(before, next);
                before = next;
            }

            foreach (var (from, to, turn) in _windows.Value)
                sum -= weight * turn * Below(At(Turned(from.Phi), from.Low, from.Length), At(Turned(to.Phi), to.Low, to.Length));
        }

        return sum * (outer - inner);
    }

    private static IEnumerable<(double Share, double Weight)> Through()
    {
        var rule = new GaussLegendreRule(0, Math.PI, 6);
        var half = Enumerable.Range(0, rule.Order).Select(i => rule.GetWeight(i) * Math.Sin(rule.GetAbscissa(i)) / 2).ToList();
        // Made to add up to one, and to hold the middle by their evenness, so that a ring whole is exact.
        return half.Select((weight, i) => ((1 - Math.Cos(rule.GetAbscissa(i))) / 2, weight / half.Sum()));
    }

    private static (double Phi, double Low, double Length) Side(PortSite site, WindowsDesign row, double middle, double aside) =>
        row.HeightAt(aside) is var height
            ? (middle + (aside / site.Port.OuterRadius), site.InnerEnd + row.Up + ((row.Height - height) / 2), height)
            : default;

    private static (double Sin, double Cos) Turned(double phi) => (Math.Sin(phi), Math.Cos(phi));

    private static double Phi(int turning) => Turns.Full * (turning + 0.5) / Turnings;

    /// <summary>The mean of a cut held between zero and the length, both straight from one line to the next.</summary>
    private static double Clamped((double Cut, double Length) a, (double Cut, double Length) b)
    {
        double Value(double t) => Math.Clamp(a.Cut + (t * (b.Cut - a.Cut)), 0, Math.Max(0, a.Length + (t * (b.Length - a.Length))));
        var (first, second) = (Root(a.Cut, b.Cut), Root(a.Cut - a.Length, b.Cut - b.Length));
        if (first == 0 && second == 0)
            return (Value(0) + Value(1)) / 2;
        if (first > second)
            (first, second) = (second, first);
        return ((first * (Value(0) + Value(first))) + ((second - first) * (Value(first) + Value(second)))
            + ((1 - second) * (Value(second) + Value(1)))) / 2;
    }

    /// <summary>Where a straight line from one value to the other passes zero, as a share of the way; zero where it does not.</summary>
    private static double Root(double from, double to) => from < 0 != to < 0 ? from / (from - to) : 0;
}
