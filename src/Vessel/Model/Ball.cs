using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>A ball that holds some bodies.</summary>
internal readonly record struct Ball(Vector3 Centre, double Radius)
{
    public static Ball Round(IReadOnlyCollection<ConvexBody> bodies)
    {
        Vector3[] ways = [Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ];
        double Most(Vector3 way) => bodies.Max(body => body.Furthest(way).Dot(way));
        var (low, high) = (
            new Vector3(-Most(-ways[0]), -Most(-ways[1]), -Most(-ways[2])), new Vector3(Most(ways[0]), Most(ways[1]), Most(ways[2])));
        return new(0.5 * (low + high), (high - low).Length / 2);
    }

    public double DistanceTo(Ball other) => (Centre - other.Centre).Length - Radius - other.Radius;
}
