using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Mockups;

namespace Vessel.Fixtures;

/// <summary>What stands in a fixture's way: places on the outside of neighbours, in the frame of the fixture's port.</summary>
/// <param name="Window">Height of the feet over the host, mm.</param>
internal sealed record FixtureRoom(FixtureBase On, ImmutableArray<(string Name, Vector3 At)> Neighbours, double Window)
{
    /// <summary>Distance that the fixture keeps off its neighbours, with their weld, mm.</summary>
    private const double Play = 5;

    private static Point2 Across(Vector3 at) => new(at.X, at.Y);

    /// <summary>Name of what stands in the way of the sleeve; null for nothing.</summary>
    /// <param name="radius">Radius of its outside, mm.</param>
    /// <param name="end">Place of its outer end, as far out as it reaches, mm.</param>
    public string? InSleeve(double radius, double end) =>
        First(at => at.Z < end + Play && Across(at).Length < radius + Play);

    /// <summary>Name of what stands in the way of a foot; null for nothing.</summary>
    /// <param name="radius">Radius to its outer end, mm.</param>
    public string? UnderFoot(Interval around, double radius)
    {
        var (middle, half) = ((around.Start + around.End) / 2, around.Length / 2);
        return First(at =>
        {
            var (length, aside) = (Across(at).Length, Math.Abs(Turns.Signed(Across(at).Angle - middle)));
            return length < radius + Play && (aside - half) * length < Play && IsLow(at);
        });
    }

    /// <summary>Name of what stands in the way of a leg from a foot to the edge; null for nothing.</summary>
    /// <param name="way">Sign of X along which it goes.</param>
    /// <param name="a">One of its sides, along Y, mm.</param>
    /// <param name="b">The other.</param>
    public string? UnderLeg(int way, double a, double b) =>
        First(at => way * at.X > 0 && at.Y > Math.Min(a, b) - Play && at.Y < Math.Max(a, b) + Play && IsLow(at));

    private bool IsLow(Vector3 at) => at.Z < On.Level(Across(at)) + Window + Play;

    /// <summary>Behind the host's outside nothing is in the way.</summary>
    private string? First(Func<Vector3, bool> isInTheWay)
    {
        foreach (var (name, at) in Neighbours)
        {
            if (isInTheWay(at) && at.Z > On.Level(Across(at)) - Play)
                return name;
        }

        return null;
    }
}
