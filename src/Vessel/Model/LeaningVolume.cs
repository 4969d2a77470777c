using MathNet.Numerics.Integration;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>The volume of a solid of revolution below a plane that leans.</summary>
/// <remarks>
/// Let the vessel lean by t towards +x. Oil that stands at the level s lies where z cos t - x sin t is less than s: at the
/// height z beyond x0 = (z cos t - s) / sin t. In the circle of radius r(z) that is a circular segment of area
/// r^2 acos(x0 / r) - x0 sqrt(r^2 - x0^2); nothing where x0 is r or more, the whole circle where it is -r or less. The
/// volume is the integral of that over z. The segment grows like the 3/2 power of the way past x0 = +-r, so the heights
/// where that holds part the range, and z = a + (b - a)(1 - cos w) / 2 makes each part smooth at both its ends. Derived
/// here; to about 1e-9 of the volume for shapes that are smooth and convex.
/// </remarks>
internal static class LeaningVolume
{
    private const int Samples = 32;

    private static readonly GaussLegendreRule _rule = new(0, Math.PI, 32);

    /// <summary>mm3.</summary>
    /// <param name="radius">Radius at a height; continuous.</param>
    /// <param name="lean">Radians, above zero and below a quarter turn.</param>
    /// <param name="level">Level of the oil along the plumb line, mm.</param>
    public static double Of(Interval heights, Func<double, double> radius, double lean, double level)
    {
        var (sin, cos) = Math.SinCos(lean);
        double Edge(double z) => ((z * cos) - level) / sin;
        var ends = Crossings(heights, z => radius(z) - Edge(z))
            .Concat(Crossings(heights, z => radius(z) + Edge(z)))
            .Append(heights.Start)
            .Append(heights.End)
            .Order()
            .ToList();
        var sum = 0.0;
        for (var i = 0; i + 1 < ends.Count; i++)
            sum += Between(ends[i], ends[i + 1], z => Segment(radius(z), Edge(z)));
        return sum;
    }

    /// <summary>The part of a circle that lies beyond a straight line so far from its middle.</summary>
    public static double Segment(double radius, double from)
    {
        if (from >= radius)
            return 0;
        if (from <= -radius)
            return Math.PI * radius * radius;
        return (radius * radius * Math.Acos(from / radius)) - (from * Math.Sqrt((radius - from) * (radius + from)));
    }

    private static double Between(double a, double b, Func<double, double> f)
    {
        var sum = 0.0;
        for (var i = 0; i < _rule.Order; i++)
        {
            var (sin, cos) = Math.SinCos(_rule.GetAbscissa(i));
            sum += _rule.GetWeight(i) * sin * f(a + ((b - a) * (1 - cos) / 2));
        }

        return sum * (b - a) / 2;
    }

    private static IEnumerable<double> Crossings(Interval heights, Func<double, double> f)
    {
        var (before, at) = (heights.Start, f(heights.Start));
        for (var i = 1; i <= Samples; i++)
        {
            var next = heights.At((double)i / Samples);
            var there = f(next);
            if ((at < 0) != (there < 0))
                yield return Halved(before, next, at < 0, f);
            (before, at) = (next, there);
        }
    }

    private static double Halved(double low, double high, bool lowIsNegative, Func<double, double> f)
    {
        for (var middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
            (low, high) = (f(middle) < 0) == lowIsNegative ? (middle, high) : (low, middle);
        return low;
    }
}
