namespace Vessel.Geometry;

/// <summary>
/// The footprint on a sphere of <paramref name="Radius"/> whose centre lies <paramref name="Offset"/> from the axis,
/// towards -X of the frame.
/// </summary>
/// <param name="OriginRadius">Radius of the concentric sphere on which the frame's origin lies.</param>
/// <remarks>With q = (e + r cos phi, r sin phi) across the axis: s = sqrt(R^2 - q^2) from the centre's level.</remarks>
public sealed record SphereFootprint(double Radius, double OriginRadius, double Offset) : Footprint
{
    private double OriginRise => Math.Sqrt((OriginRadius - Offset) * (OriginRadius + Offset));

    public override bool Takes(double r) => Math.Abs(Offset) + r <= Radius;

    public override double Reach(double r, double phi) => Rise(r, phi) - OriginRise;

    public override double ReachSlope(double r, double phi)
    {
        var rise = Rise(r, phi);
        return rise == 0 ? 0 : Offset * r * Math.Sin(phi) / rise;
    }

    public override Vector3 Normal(double r, double phi) =>
        (1 / Radius) * new Vector3(Offset + (r * Math.Cos(phi)), r * Math.Sin(phi), Rise(r, phi));

    public override double Distance(Vector3 point) =>
        new Vector3(Offset + point.X, point.Y, OriginRise + point.Z).Length - Radius;

    public override double GoverningRadius(double inner, double outer, double phi) =>
        // Nearest to the sphere's own axis reaches furthest: d(q^2)/dr = 0.
        Math.Clamp(-Offset * Math.Cos(phi), inner, outer);

    private double Rise(double r, double phi)
    {
        var square = (Offset * Offset) + (2 * Offset * r * Math.Cos(phi)) + (r * r);
        return Math.Sqrt(Math.Max(0, (Radius * Radius) - square));
    }
}
