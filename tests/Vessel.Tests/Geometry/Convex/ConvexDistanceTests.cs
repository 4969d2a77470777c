using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class ConvexDistanceTests
{
    /// <summary>What is asked of every distance here.</summary>
    private const double Bracket = 1e-6;

    [Theory]
    [InlineData(10, 0, 0)]
    [InlineData(10, 3, 4)]
    public void Parallel_bars_side_by_side_are_their_axes_less_their_radii(double apart, double aside, double along)
    {
        var (a, b) = (new Bar(new(0, 0, 0), new(0, 0, 20), 2), new Bar(new(apart, aside, along), new(apart, aside, along + 20), 3));

        Holds(double.Hypot(apart, aside) - 5, a, b);
    }

    [Fact]
    public void Bars_end_to_end_are_as_far_as_their_faces() =>
        Holds(5, new Bar(new(0, 0, 0), new(0, 0, 20), 2), new Bar(new(1, 0, 25), new(1, 0, 40), 7));

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.2)]
    public void Skew_bars_are_the_common_normal_of_their_axes_less_their_radii(double turned)
    {
        var (sin, cos) = Math.SinCos(turned);
        var way = new Vector3(cos, sin, 0);

        Holds(7.5, new Bar(new(-50, 0, 0), new(50, 0, 0), 4),
            new Bar((-40 * way) + new Vector3(0, 0, 14.5), (60 * way) + new Vector3(0, 0, 14.5), 3));
    }

    [Fact]
    public void A_bars_rim_against_a_corner_of_a_box()
    {
        // From the corner (10, 10, 0) the rim of radius 3 round the origin, 4 above: sqrt((sqrt(200) - 3)^2 + 4^2).
        var box = new Hull(
            [.. from x in (double[])[10, 30] from y in (double[])[10, 30] from z in (double[])[-20, 0] select new Vector3(x, y, z)]);

        Holds(double.Hypot(Math.Sqrt(200) - 3, 4), new Bar(new(0, 0, 4), new(0, 0, 30), 3), box);
    }

    [Fact]
    public void Bodies_that_meet_have_no_distance()
    {
        var distance = ConvexDistance.Between(new Bar(new(0, 0, 0), new(0, 0, 20), 5), new Bar(new(-20, 3, 10), new(20, 4, 12), 2));

        Assert.Equal(new Interval(0, 0), distance);
    }

    [Fact]
    public void Random_bars_keep_the_distance_of_their_densest_segments_within_what_the_segments_leave()
    {
#pragma warning disable CA5394 // Not for secrets: the same seed must give the same bars.
        var dice = new Random(7);
        Vector3 Place(double size) =>
            new(size * (dice.NextDouble() - 0.5), size * (dice.NextDouble() - 0.5), size * (dice.NextDouble() - 0.5));
        for (var i = 0; i < 40; i++)
        {
            var (a, b) = (new Bar(Place(60), Place(60), 1 + (4 * dice.NextDouble())),
                new Bar(Place(60) + new Vector3(50, 0, 0), Place(60) + new Vector3(50, 0, 0), 1 + (4 * dice.NextDouble())));
#pragma warning restore CA5394
            var distance = ConvexDistance.Between(a, b, Bracket);
            var lines = (from p in Lines(a) from q in Lines(b) select Segments.Distance(p.A, p.B, q.A, q.B)).Min();

            // Lines lie on the bars, so they are no nearer; a bar is no nearer than a line by the sagitta between two lines.
            var sagitta = (a.Radius + b.Radius) * (1 - Math.Cos(Math.PI / Count));
            Assert.InRange(distance.End - distance.Start, 0, Bracket);
            Assert.InRange(distance.Start, 0, lines + Bracket);
            if (distance.Start > 0)
                Assert.InRange(lines, distance.Start - Bracket, distance.End + sagitta + (0.1 * sagitta) + RimStep(a) + RimStep(b));
        }
    }

    private const int Count = 60;

    /// <summary>Along a rim the nearest point may lie between two lines by half a step.</summary>
    private static double RimStep(Bar bar) => bar.Radius * Math.PI / Count;

    private static IEnumerable<(Vector3 A, Vector3 B)> Lines(Bar bar)
    {
        var z = (bar.B - bar.A).Unit();
        var x = z.Cross(Math.Abs(z.X) < 0.8 ? Vector3.UnitX : Vector3.UnitY).Unit();
        var y = z.Cross(x);
        for (var i = 0; i < Count; i++)
        {
            var (u, v) = Point2.Polar(bar.Radius, Turns.Full * i / Count);
            var off = (u * x) + (v * y);
            yield return (bar.A + off, bar.B + off);
            yield return (bar.A, bar.A + off);
            yield return (bar.B, bar.B + off);
        }
    }

    private static void Holds(double expected, ConvexBody a, ConvexBody b)
    {
        var distance = ConvexDistance.Between(a, b, Bracket);
        Assert.InRange(distance.End - distance.Start, 0, Bracket);
        // Rounding of sums of some tens of mm.
        Assert.InRange(expected, distance.Start - 1e-12, distance.End + 1e-12);
        var back = ConvexDistance.Between(b, a, Bracket);
        Near.Absolute(distance.End, back.End, Bracket);
    }
}
