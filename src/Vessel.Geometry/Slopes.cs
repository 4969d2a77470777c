namespace Vessel.Geometry;

/// <summary>Derivatives of curves that have no simple one of their own.</summary>
public static class Slopes
{
    /// <summary>
    /// Five-point central difference, one-sided by a shift of the stencil at the ends of the domain; error about 1e-10
    /// of the curve's size.
    /// </summary>
    public static Point2 Of(Func<double, Point2> curve, double t, Interval domain)
    {
        var h = 1e-3 * domain.Length / (2 * Math.PI);
        if (t - (2 * h) < domain.Start || t + (2 * h) > domain.End)
            return OneSided(curve, t, t - (2 * h) < domain.Start ? h : -h);
        return (1 / (12 * h)) * (curve(t - (2 * h)) - (8 * curve(t - h)) + (8 * curve(t + h)) - curve(t + (2 * h)));
    }

    private static Point2 OneSided(Func<double, Point2> curve, double t, double h) =>
        (1 / (12 * h)) * ((-25 * curve(t)) + (48 * curve(t + h)) - (36 * curve(t + (2 * h)))
            + (16 * curve(t + (3 * h))) - (3 * curve(t + (4 * h))));
}
