using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// The footprint on a cylinder of <paramref name="Radius"/>. The axis passes the cylinder's own at a distance of
/// <paramref name="Offset"/> and rises by <paramref name="Tilt"/> out of the plane square to it; phi = 0 is the side
/// that faces down the cylinder's axis, phi = 90 degrees the side away from it by the offset's sign.
/// </summary>
/// <param name="OriginRadius">Radius of the coaxial cylinder on which the frame's origin lies.</param>
/// <remarks>
/// With y = e + r sin phi (sideways) and x = sqrt(R^2 - y^2) (outward): a point of the line at distance s along the
/// axis lies outward by s cos T + r cos phi sin T, so s = (x - r cos phi sin T) / cos T from the cylinder's axis.
/// R - y and R + y are summed from (R - e - r) and 1 -+ sin phi, so that nothing cancels where the line grazes.
/// Classical descriptive geometry; derived here.
/// </remarks>
public sealed record CylinderFootprint(double Radius, double OriginRadius, double Offset, double Tilt) : Footprint
{
    private double OriginOutward => Math.Sqrt((OriginRadius - Offset) * (OriginRadius + Offset));

    public override bool Takes(double r) => Math.Abs(Offset) + r <= Radius;

    /// <summary>Where lines of radius r graze the cylinder, so that their meeting points turn a corner; ascending.</summary>
    public ImmutableArray<double> Corners(double r)
    {
        // As near as this the corner's rounding is finer than what is written.
        var hair = 1e-12 * Radius;
        return
        [
            .. Radius - Offset - r < hair ? new[] { Math.PI / 2 } : [],
            .. Radius + Offset - r < hair ? new[] { 3 * Math.PI / 2 } : [],
        ];
    }

    public double Sideways(double r, double phi) => Offset + (r * Math.Sin(phi));

    /// <summary>Distance outward from the cylinder's axis, sqrt(R^2 - y^2).</summary>
    public double Outward(double r, double phi)
    {
        var half = (Math.PI / 4) - (phi / 2);
        var (sin, cos) = Math.SinCos(half);
        var below = Radius - Offset - r + (2 * r * sin * sin);
        var above = Radius + Offset - r + (2 * r * cos * cos);
        return Math.Sqrt(Math.Max(0, below) * Math.Max(0, above));
    }

    public override double Reach(double r, double phi) =>
        (Outward(r, phi) - OriginOutward - (r * Math.Cos(phi) * Math.Sin(Tilt))) / Math.Cos(Tilt);

    public override double ReachSlope(double r, double phi)
    {
        var outward = Outward(r, phi);
        // At a grazing line both parts vanish; the limit from either side is finite and the places are isolated.
        var outwardSlope = outward == 0 ? 0 : -Sideways(r, phi) * r * Math.Cos(phi) / outward;
        return (outwardSlope + (r * Math.Sin(phi) * Math.Sin(Tilt))) / Math.Cos(Tilt);
    }

    /// <summary>Distance along the axis of the innermost place that a square end of radius r may have within the cylinder, mm.</summary>
    public double Innermost(double r)
    {
        var (sin, cos) = (Math.Sin(Tilt), Math.Cos(Tilt));
        // Where a line leaves the cylinder on its far side, as in Reach with x below zero.
        double Leaves(double phi) => (-Outward(r, phi) - OriginOutward - (r * Math.Cos(phi) * sin)) / cos;
        double Slope(double phi)
        {
            var outward = Outward(r, phi);
            return ((outward == 0 ? 0 : Sideways(r, phi) * r * Math.Cos(phi) / outward) + (r * Math.Sin(phi) * sin)) / cos;
        }

        return Extremes.Of(Leaves, Slope, Interval.Turn).End;
    }

    public override Vector3 Normal(double r, double phi)
    {
        // Outward in the cylinder's own directions is (x, y) / R; the frame's X and Z share the outward one.
        var outward = Outward(r, phi) / Radius;
        return new(outward * Math.Sin(Tilt), Sideways(r, phi) / Radius, outward * Math.Cos(Tilt));
    }

    public override double Distance(Vector3 point)
    {
        var outward = OriginOutward + (point.X * Math.Sin(Tilt)) + (point.Z * Math.Cos(Tilt));
        return Math.Sqrt((outward * outward) + ((Offset + point.Y) * (Offset + point.Y))) - Radius;
    }

    public override double GoverningRadius(double inner, double outer, double phi)
    {
        // dReach/dr = 0: -y sin phi = x cos phi sin T, with x^2 + y^2 = R^2.
        var (sin, cos) = Math.SinCos(phi);
        var pull = cos * Math.Sin(Tilt);
        if (Math.Abs(sin) < 1e-12)
            return pull > 0 ? inner : outer;
        var sideways = -Math.Sign(sin) * Radius * pull / Math.Sqrt((sin * sin) + (pull * pull));
        return Math.Clamp((sideways - Offset) / sin, inner, outer);
    }

    /// <summary>
    /// Where line (r, phi) meets the cylinder: (angle round its axis from where the frame's axis points, height along
    /// it from the frame's origin). Radians, mm.
    /// </summary>
    public Point2 Place(double r, double phi) => new(
        Math.Atan2(Sideways(r, phi), Outward(r, phi)),
        (Reach(r, phi) * Math.Sin(Tilt)) - (r * Math.Cos(phi) * Math.Cos(Tilt)));

    /// <summary>d Place / d phi.</summary>
    public Point2 PlaceSlope(double r, double phi)
    {
        var outward = Outward(r, phi);
        return new(
            outward == 0 ? 0 : r * Math.Cos(phi) / outward,
            (ReachSlope(r, phi) * Math.Sin(Tilt)) + (r * Math.Sin(phi) * Math.Cos(Tilt)));
    }
}
