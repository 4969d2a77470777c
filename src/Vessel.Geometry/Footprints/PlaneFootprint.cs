namespace Vessel.Geometry;

/// <summary>The footprint on a plane square to the axis, <paramref name="Level"/> along it from the origin, mm.</summary>
public sealed record PlaneFootprint(double Level) : Footprint
{
    public override bool Takes(double r) => true;

    public override double Reach(double r, double phi) => Level;

    public override double ReachSlope(double r, double phi) => 0;

    public override Vector3 Normal(double r, double phi) => Vector3.UnitZ;

    public override double Distance(Vector3 point) => point.Z - Level;

    public override double GoverningRadius(double inner, double outer, double phi) => inner;
}
