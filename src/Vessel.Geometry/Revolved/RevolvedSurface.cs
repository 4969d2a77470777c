namespace Vessel.Geometry;

/// <summary>
/// A profile turned about the axis: spun heads. As on <see cref="SphereSurface"/> the chart is polar, its radius the arc length
/// from the profile's start and its angle that round +Z.
/// </summary>
/// <param name="Profile">Begins on the axis, or runs outward from a ring.</param>
/// <param name="Inner">Chart radius at which it begins: zero for one that begins on the axis.</param>
public sealed record RevolvedSurface(Profile Profile, double Inner = 0) : Surface
{
    public override Vector3 At(Point2 chart)
    {
        var from = chart.Length;
        var (ring, height) = Profile.At(from - Inner);
        return from == 0 ? new(0, 0, height) : new(ring * chart.U / from, ring * chart.V / from, height);
    }

    public override Vector3 Normal(Point2 chart)
    {
        var from = chart.Length;
        var (across, up) = Profile.Normal(from - Inner);
        return from == 0 ? new(0, 0, -up) : new(-across * chart.U / from, -across * chart.V / from, -up);
    }

    /// <summary>The chart point of the place nearest to a point, which lies on or near the surface.</summary>
    public Point2 ChartOf(Vector3 point)
    {
        var ring = double.Hypot(point.X, point.Y);
        var from = Inner + Profile.Nearest(new(ring, point.Z)).Along;
        return ring == 0 ? default : new(from * point.X / ring, from * point.Y / ring);
    }
}
