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

    /// <summary>
    /// mm3 of metal below a level along a unit direction. Line by line along the tube, so the level cuts each exactly; the sum round the tube
    /// converges fast while no line is cut, and to about 1e-4 of the metal where some are.
    /// </summary>
    public double VolumeBelow(double level, Vector3 up)
    {
        var (inner, outer) = (Site.Port.BoreRadius, Site.Port.OuterRadius);
        var sum = 0.0;
        foreach (var depth in _depths)
        {
            var r = inner + (depth * (outer - inner));
            for (var i = 0; i < Turnings; i++)
                sum += r * LengthBelow(r, Turns.Full * (i + 0.5) / Turnings, level, up);
        }

        return sum * (outer - inner) / _depths.Length * Turns.Full / Turnings;
    }

    private double LengthBelow(double r, double phi, double level, Vector3 up)
    {
        var (from, to) = (Site.InnerEnd, Site.Inside.Reach(r, phi));
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
