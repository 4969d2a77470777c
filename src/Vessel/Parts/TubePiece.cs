using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A straight piece of round tube along +Z between two ends.</summary>
/// <param name="Accuracy">What integrals over it may aim for; see <see cref="Footprint.Accuracy"/>.</param>
internal sealed record TubePiece(double OuterRadius, double BoreRadius, TubeEnd Lower, TubeEnd Upper, double Accuracy)
{
    /// <summary>Gauss points over the wall, from -1 to 1: exact to the fifth power of r.</summary>
    private static readonly (double At, double Weight)[] _wall =
        [(-Math.Sqrt(0.6), 5.0 / 9), (0, 8.0 / 9), (Math.Sqrt(0.6), 5.0 / 9)];

    /// <summary>mm3.</summary>
    public double Volume => Over(Upper, (_, _, z) => z) - Over(Lower, (_, _, z) => z);

    /// <summary>Where its mass acts.</summary>
    public Vector3 Centre
    {
        get
        {
            double Moment(Func<double, double, double, double> share) => Over(Upper, share) - Over(Lower, share);
            return 1 / Volume * new Vector3(
                Moment((r, phi, z) => r * Math.Cos(phi) * z),
                Moment((r, phi, z) => r * Math.Sin(phi) * z),
                Moment((_, _, z) => z * z / 2));
        }
    }

    public Solid Solid()
    {
        var (outer, inner) = (new CylinderSurface(OuterRadius), new CylinderSurface(BoreRadius));
        return ThickSolid.Of(outer, inner, true, [RimOf(Lower), RimOf(Upper)]);

        Rim RimOf(TubeEnd end) => new(
            Interval.Turn,
            end.Breaks,
            phi => outer.ChartOf(new(phi, end.Outer(phi))),
            phi => inner.ChartOf(new(phi, end.Inner(phi))),
            1,
            end.Through is not { } through ? null : (phi, w) =>
            {
                var r = outer.Radius + (w * (inner.Radius - outer.Radius));
                return Footprint.OnLine(r, phi, through(r, phi));
            });
    }

    /// <summary>The integral of f(r, phi, z) over an end's face, area element r dr dphi.</summary>
    private double Over(TubeEnd end, Func<double, double, double, double> f)
    {
        if (end.Through is { } through)
            return Quadrature.Ring(BoreRadius, OuterRadius, (r, phi) => f(r, phi, through(r, phi)), Accuracy);
        var (middle, half) = ((OuterRadius + BoreRadius) / 2, (OuterRadius - BoreRadius) / 2);
        return Quadrature.Periodic(
            phi =>
            {
                var (outer, inner, sum) = (end.Outer(phi), end.Inner(phi), 0.0);
                foreach (var (at, weight) in _wall)
                {
                    var r = middle + (at * half);
                    sum += weight * r * f(r, phi, inner + ((1 + at) / 2 * (outer - inner)));
                }

                return half * sum;
            },
            Interval.Turn,
            end.Breaks,
            Accuracy);
    }
}
