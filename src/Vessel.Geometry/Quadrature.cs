using System.Collections.Immutable;
using MathNet.Numerics.Integration;

namespace Vessel.Geometry;

/// <summary>Integrals over curves and discs to about 1e-11 of their size.</summary>
public static class Quadrature
{
    private const double Relative = 1e-12;

    /// <summary>Adaptive Gauss-Kronrod over the pieces between the breaks and the quarter points.</summary>
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
            sum += GaussKronrodRule.Integrate(f, ends[i], ends[i + 1], out _, out _, relative, 15, 15);
        return sum;
    }

    /// <summary>The integral of f(r, phi) over the disc of a radius.</summary>
    public static double Disc(double radius, Func<double, double, double> f) => Ring(0, radius, f);

    /// <summary>The integral of f(r, phi) over the ring between two radii, area element r dr dphi.</summary>
    public static double Ring(double inner, double outer, Func<double, double, double> f) =>
        Periodic(
            phi => GaussKronrodRule.Integrate(r => r * f(r, phi), inner, outer, out _, out _, 1e-11, 10, 15),
            Interval.Turn,
            []);
}
