namespace Vessel.Geometry;

/// <summary>Angles that come round again.</summary>
public static class Turns
{
    public const double Full = 2 * Math.PI;

    /// <summary>For what is shown or written; inside all angles are radians.</summary>
    public static double ToDegrees(double radians) => radians * 180 / Math.PI;

    /// <summary>The angle moved by whole turns into [start, start + 2 pi), radians.</summary>
    public static double From(double angle, double start)
    {
        var turned = angle - (Full * Math.Floor((angle - start) / Full));
        // Floor rounds a hair below the start up to it plus a whole turn.
        return turned >= start + Full ? start : turned;
    }

    /// <summary>The angle moved by whole turns into (-pi, pi], radians.</summary>
    public static double Signed(double angle)
    {
        var turned = From(angle, -Math.PI);
        return turned == -Math.PI ? Math.PI : turned;
    }
}
