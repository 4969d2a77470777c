using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>Against pairs of curves whose distance has a closed form.</summary>
public sealed class ClosestApproachTests
{
    private const double Width = 0.05;

    private static SpaceCurve Circle(double radius, Vector3 centre) =>
        new(t => centre + new Vector3(radius * Math.Cos(t), radius * Math.Sin(t), 0), Interval.Turn);

    private static SpaceCurve Line(Vector3 from, Vector3 to) => new(t => from + (t * (to - from)), new(0, 1));

    [Theory]
    [InlineData(0.5)]
    [InlineData(3)]
    [InlineData(40)]
    [InlineData(900)]
    public void Circles_beside_each_other_in_a_plane(double radius)
    {
        // Turned so that the nearest points fall between the ends of chords.
        var away = new Vector3(Math.Cos(0.017), Math.Sin(0.017), 0);
        var found = ClosestApproach.Between(Circle(radius, Vector3.Zero), Circle(2 * radius, ((3 * radius) + 2) * away), 10, Width);

        Assert.NotNull(found);
        Assert.InRange(2, found.Value.Start, found.Value.End);
        Assert.InRange(found.Value.Length, 0, Width);
    }

    [Fact]
    public void Circles_over_each_other_are_as_far_apart_as_their_rims()
    {
        var found = ClosestApproach.Between(Circle(20, Vector3.Zero), Circle(23, new(0, 0, 4)), 10, Width);

        Assert.InRange(5, found!.Value.Start, found.Value.End);
    }

    [Fact]
    public void Skew_lines_are_nearest_between_their_ends()
    {
        var found = ClosestApproach.Between(Line(new(-7, 0.3, 0), new(9, 0.3, 0)), Line(new(0.2, -5, 6), new(0.2, 8, 6)), 10, Width);

        Assert.InRange(6, found!.Value.Start - 1e-9, found.Value.End + 1e-9);
    }

    [Fact]
    public void Curves_that_cross_have_no_distance() =>
        Assert.Equal(0, ClosestApproach.Between(Circle(20, Vector3.Zero), Circle(20, new(25, 0, 0)), 10, Width)!.Value.Start);

    [Fact]
    public void What_is_surely_further_apart_is_not_measured() =>
        Assert.Null(ClosestApproach.Between(Circle(20, Vector3.Zero), Circle(20, new(60, 0, 0)), 10, Width));
}
