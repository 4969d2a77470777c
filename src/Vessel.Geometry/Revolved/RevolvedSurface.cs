namespace Vessel.Geometry;

/// <summary>
/// A profile that begins on the axis, turned about it: spun heads. As on <see cref="SphereSurface"/> the chart is polar, its
/// radius the arc length from the pole and its angle that round +Z.
/// </summary>
public sealed record RevolvedSurface(Profile Profile) : Surface
{
    public override Vector3 At(Point2 chart)
    {
        var along = chart.Length;
        var (ring, height) = Profile.At(along);
        return along == 0 ? new(0, 0, height) : new(ring * chart.U / along, ring * chart.V / along, height);
    }

    public override Vector3 Normal(Point2 chart)
    {
        var along = chart.Length;
        var (across, up) = Profile.Normal(along);
        return along == 0 ? new(0, 0, -up) : new(-across * chart.U / along, -across * chart.V / along, -up);
    }

    /// <summary>The chart point of the place nearest to a point, which lies on or near the surface.</summary>
    public Point2 ChartOf(Vector3 point)
    {
        var ring = double.Hypot(point.X, point.Y);
        var along = Profile.Nearest(new(ring, point.Z)).Along;
        return ring == 0 ? default : new(along * point.X / ring, along * point.Y / ring);
    }
}
