using System.Collections.Immutable;
using MathNet.Numerics.Integration;

namespace Vessel.Geometry;

/// <summary>Integrals over curves and discs to about 1e-11 of their size.</summary>
public static class Quadrature
{
    private const double Relative = 1e-12;
    private const double RingRelative = 1e-11;
    private const int Order = 31;
    private const int Depth = 10;

    /// <summary>
    /// Adaptive Gauss-Kronrod over the pieces between the breaks and the quarter points. Each piece is first stretched at
    /// its ends, t = s^3 (10 - 15 s + 6 s^2), so that a peak there, however narrow, becomes a gentle slope.
    /// </summary>
    /// <param name="relative">Aim for each piece; no finer than the noise of f, or the search runs to its limit.</param>
    public static double Periodic(
        Func<double, double> f, Interval domain, ImmutableArray<double> breaks, double relative = Relative)
    {
        // Near equal diameters integrands peak at quarter turns, so these are ends of pieces.
        var ends = breaks
            .Concat([domain.Start, domain.At(0.25), domain.At(0.5), domain.At(0.75), domain.End])
            .Distinct()
            .Order()
            .ToList();
        var sum = 0.0;
        for (var i = 0; i + 1 < ends.Count; i++)
        {
            var piece = new Interval(ends[i], ends[i + 1]);
            sum += GaussKronrodRule.Integrate(s => Stretched(f, piece, s), 0, 1, out _, out _, relative, Depth, Order);
        }

        return sum;
    }

    private static double Stretched(Func<double, double> f, Interval piece, double s)
    {
        var ends = s * (1 - s);
        return f(piece.At(s * s * s * (10 - (s * (15 - (6 * s)))))) * 30 * ends * ends * piece.Length;
    }

    /// <summary>The integral of f(r, phi) over the disc of a radius.</summary>
    public static double Disc(double radius, Func<double, double, double> f, double relative = RingRelative) =>
        Ring(0, radius, f, relative);

    /// <summary>The integral of f(r, phi) over the ring between two radii, area element r dr dphi.</summary>
    /// <param name="relative">Relative error, as for <see cref="Periodic"/>.</param>
    public static double Ring(double inner, double outer, Func<double, double, double> f, double relative = RingRelative) =>
        Periodic(
            phi => GaussKronrodRule.Integrate(r => r * f(r, phi), inner, outer, out _, out _, relative, 10, 15),
            Interval.Turn,
            [],
            relative == RingRelative ? Relative : relative);
}
