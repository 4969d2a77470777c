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

    /// <summary>A flat middle and a knuckle.</summary>
    public static Profile Pan(double radius, double knuckle)
    {
        if (!(knuckle > 0 && knuckle < radius))
            throw new ArgumentException("the knuckle is less than the radius");
        var across = radius - knuckle;
        return new(
            new LinePiece(new(0, -knuckle), new(across, -knuckle)),
            new ArcPiece(new(across, 0), knuckle, _lower));
    }

    /// <summary>A round nose, a cone, and a knuckle, each in line with the next.</summary>
    /// <param name="half">Between axis and cone, radians.</param>
    public static Profile Toricone(double radius, double half, double nose, double knuckle)
    {
        if (!(knuckle > 0 && knuckle < radius && nose > 0 && ConeLine(radius, half, nose, knuckle) > 0))
            throw new ArgumentException("nose and knuckle leave no cone");
        var (sin, cos) = Math.SinCos(half);
        // The cone's normal leads from the centre of either arc to where the cone touches it.
        var (normal, line) = (new Point2(cos, -sin), ConeLine(radius, half, nose, knuckle) * new Point2(sin, cos));
        var across = new Point2(radius - knuckle, 0);
        var (wide, narrow) = (across + (knuckle * normal), across + (knuckle * normal) - line);
        return new(
            new ArcPiece(new(0, narrow.V + (nose * sin)), nose, new(-Math.PI / 2, -half)),
            new LinePiece(narrow, wide),
            new ArcPiece(across, knuckle, new(-half, 0)));
    }

    /// <summary>Length of the cone between nose and knuckle, along it, mm; negative where they leave none.</summary>
    public static double ConeLine(double radius, double half, double nose, double knuckle) =>
        (radius - knuckle + ((knuckle - nose) * Math.Cos(half))) / Math.Sin(half);

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
