namespace Vessel.Geometry;

/// <summary>
/// Profiles of dished ends with their pole below: from the pole out and up to the circle of greatest radius, where they run
/// straight up and which is z = 0.
/// </summary>
public static class Domes
{
    private static readonly Interval _lower = new(-Math.PI / 2, 0);

    public static Profile Sphere(double radius) => new(new ArcPiece(default, radius, _lower));

    /// <summary>Half an ellipsoid, or what lies so far outside one.</summary>
    public static Profile Ellipsoid(double radius, double depth, double beyond = 0) =>
        new(new EllipsePiece(0, radius, depth, beyond, _lower));

    /// <summary>A crown and a knuckle that meet in line.</summary>
    /// <remarks>Their centres lie R - a apart, so the crown's half angle has the sine (radius - a) / (R - a).</remarks>
    public static Profile Torisphere(double radius, double crown, double knuckle)
    {
        if (!(knuckle > 0 && knuckle < radius && crown > radius))
            throw new ArgumentException("the knuckle is less than the radius, the crown more");
        var (across, apart) = (radius - knuckle, crown - knuckle);
        var rise = Math.Sqrt((apart - across) * (apart + across));
        var joint = Math.Atan2(-rise, across);
        return new(
            new ArcPiece(new(0, rise), crown, new(-Math.PI / 2, joint)),
            new ArcPiece(new(across, 0), knuckle, new(joint, 0)));
    }
}
