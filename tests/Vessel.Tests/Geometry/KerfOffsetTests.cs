using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>The law of Steiner for convex outlines, distances for all others.</summary>
public sealed class KerfOffsetTests
{
    /// <summary>Sums of products of lengths below 200 mm.</summary>
    private const double Rounding = 1e-9;

    private static readonly ImmutableArray<Bulge> _plate = Chain((0, 0, 0), (80, 0, 0), (80, 50, 0), (0, 50, 0));

    /// <summary>A slot: two lines and two half circles.</summary>
    private static readonly ImmutableArray<Bulge> _slot = Chain((0, -5, 0), (30, -5, 1), (30, 5, 0), (0, 5, 1));

    /// <summary>An L with an inner corner, and a bite taken out of its upper side.</summary>
    private static readonly ImmutableArray<Bulge> _angle =
        Chain((0, 0, 0), (60, 0, 0), (60, 20, 0), (45, 20, -0.6), (35, 20, 0), (20, 20, 0), (20, 70, 0), (0, 70, 0));

    private static double Length(ImmutableArray<Bulge> chain) => CurveMeasures.Length(new FittedLoop(chain, 0).ToLoop());

    private static ImmutableArray<Bulge> Chain(params (double X, double Y, double Bulge)[] vertices) =>
        [.. vertices.Select(v => new Bulge(new(v.X, v.Y), v.Bulge))];

    [Theory]
    [InlineData(0.1)]
    [InlineData(1.5)]
    public void A_convex_outline_grows_by_its_length_times_the_distance_and_a_circle(double by)
    {
        foreach (var chain in (ImmutableArray<Bulge>[])[_plate, _slot])
        {
            var moved = KerfOffset.Right(chain, by)!.Value;

            Near.Relative(BulgeChain.Area(chain) + (by * Length(chain)) + (Math.PI * by * by), BulgeChain.Area(moved), Rounding);
            Near.Relative(Length(chain) + (Turns.Full * by), Length(moved), Rounding);
        }
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(1)]
    public void Every_point_lies_as_far_from_the_edge_as_the_cutter_is_wide(double by)
    {
        foreach (var chain in (ImmutableArray<Bulge>[])[_angle, [.. Reversed(_slot)], [.. Reversed(_plate)]])
        {
            var moved = KerfOffset.Right(chain, by)!.Value;

            // The edge as a polygon: an arc of radius 10 in 400 chords sags by less than 1e-4 mm.
            var edge = BulgeChain.Points(chain, 400);
            Assert.All(BulgeChain.Points(moved, 5), p => Near.Absolute(by, BulgeChain.Distance([p], edge), 1e-4));
        }
    }

    [Fact]
    public void There_and_back_is_where_it_began()
    {
        var there = KerfOffset.Right(_slot, 0.7)!.Value;

        var back = KerfOffset.Right([.. Reversed(there)], 0.7)!.Value;

        Near.Relative(BulgeChain.Area(_slot), -BulgeChain.Area(back), Rounding);
    }

    [Fact]
    public void A_cutter_wider_than_a_slot_or_a_notch_does_not_pass()
    {
        Assert.Null(KerfOffset.Right([.. Reversed(_slot)], 5.01));
        Assert.NotNull(KerfOffset.Right([.. Reversed(_slot)], 4.99));
        Assert.Null(KerfOffset.Right([.. Reversed(_plate)], 25.01));
    }

    private static IEnumerable<Bulge> Reversed(ImmutableArray<Bulge> chain) =>
        Enumerable.Range(0, chain.Length)
            .Select(i => new Bulge(chain[^(i + 1)].At, -chain[(2 * chain.Length - i - 2) % chain.Length].Value));
}
