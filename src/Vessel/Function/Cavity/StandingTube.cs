using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>The part of a set-in tube that stands inside; its metal takes up room.</summary>
public sealed record StandingTube(PortSite Site)
{
    private const int Turnings = 180;

    /// <summary>Heights over which a head's tube stands upright, from its inner end to its foot; none for a shell's.</summary>
    public Interval Upright => Site.Port.Host == Design.PortHost.Shell
        ? new(double.NegativeInfinity, double.NegativeInfinity)
        : (Site.Frame.ToOuter(new(0, 0, Site.InnerEnd)).Z, Site.Frame.Origin.Z) is var (end, foot) && end < foot
            ? new(end, foot)
            : new(foot, end);

    /// <summary>Two-point Gauss through the wall.</summary>
    private static readonly double[] _depths = [0.5 - (0.5 / Math.Sqrt(3)), 0.5 + (0.5 / Math.Sqrt(3))];

    /// <summary>From the tube's end to where each line leaves the room; at a cone's tip the room ends level.</summary>
    private readonly Lazy<Interval[]> _lines = new(() =>
    [
        .. from start in new[] { Site.InnerEnd }
           from depth in _depths
           let r = Site.Port.BoreRadius + (depth * (Site.Port.OuterRadius - Site.Port.BoreRadius))
           from i in Enumerable.Range(0, Turnings)
           let reach = Site.Inside.Reach(r, Phi(i))
           let end = Site.AxisRadius > 0 ? Math.Min(reach, Site.InsideAxis) : reach
           select new Interval(start, Math.Max(start, end)),
    ]);

    /// <summary>
    /// mm3 of metal below a level along a unit direction. Line by line along the tube, so the level cuts each exactly; the sum round the tube
    /// converges fast while no line is cut, and to about 1e-4 of the metal where some are.
    /// </summary>
    public double VolumeBelow(double level, Vector3 up)
    {
        var (inner, outer) = (Site.Port.BoreRadius, Site.Port.OuterRadius);
        var sum = 0.0;
        for (var d = 0; d < _depths.Length; d++)
        {
            var r = inner + (_depths[d] * (outer - inner));
            for (var i = 0; i < Turnings; i++)
                sum += r * LengthBelow(r, Phi(i), _lines.Value[(d * Turnings) + i], level, up);
        }

        return sum * (outer - inner) / _depths.Length * Turns.Full / Turnings;
    }

    private static double Phi(int turning) => Turns.Full * (turning + 0.5) / Turnings;

    private double LengthBelow(double r, double phi, Interval line, double level, Vector3 up)
    {
        var (from, to) = (line.Start, line.End);
        if (to <= from)
            return 0;
        var start = Site.Frame.ToOuter(Footprint.OnLine(r, phi, from)).Dot(up);
        var rise = Site.Frame.Z.Dot(up);
        if (Math.Abs(rise) < 1e-12)
            return start < level ? to - from : 0;
        var cut = from + ((level - start) / rise);
        return rise > 0 ? Math.Clamp(cut, from, to) - from : to - Math.Clamp(cut, from, to);
    }
}
