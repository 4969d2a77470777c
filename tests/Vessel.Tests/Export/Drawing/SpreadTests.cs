using Vessel.Export.Drawing;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export.Drawing;

public sealed class SpreadTests
{
    private static readonly Interval _room = new(-20, 120);

    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 20)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void What_is_spread_keeps_its_order_apart_and_in_the_room(int seed)
    {
        var wanted = Wanted(seed);

        Assert.True(IsFree(Spread.Of(wanted, _room), wanted));
    }

    /// <summary>The sum of squares is convex and so is what is allowed: if no small step makes it less, nothing does.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_step_brings_it_nearer_to_what_is_wanted(int seed)
    {
        var wanted = Wanted(seed);
        var places = Spread.Of(wanted, _room);
        var random = new Random(seed);
        for (var i = 0; i < 2000; i++)
        {
            // One alone, or a run of neighbours together.
            var (from, to) = (random.Next(wanted.Count), random.Next(wanted.Count));
            var step = (random.NextDouble() - 0.5) * Math.Pow(10, -random.Next(4));
            var moved = places.Select((place, k) => k >= from && k <= Math.Max(from, to) ? place + step : place).ToList();

            if (IsFree(moved, wanted))
                Assert.True(Off(moved, wanted) >= Off(places, wanted) - 1e-9);
        }
    }

    [Fact]
    public void What_stands_apart_is_left_where_it_is() =>
        Assert.Equal([10.0, 40, 90], Spread.Of([(10, 5), (40, 5), (90, 5)], _room));

    [Fact]
    public void Two_of_one_place_go_half_way_each() => Assert.Equal([48.0, 52], Spread.Of([(50, 4), (50, 4)], _room));

    [Fact]
    public void Without_room_the_last_stands_out_of_the_end() => Assert.Equal([1.0, 3, 5], Spread.Of([(2, 2), (2, 2), (2, 2)], new(0, 4)));

    [Fact]
    public void Nothing_is_spread_to_nothing() => Assert.Empty(Spread.Of([], _room));

    private static List<(double Place, double Size)> Wanted(int seed)
    {
        var random = new Random(seed);
        // At most 11 of at most 12 in a room of 140.
        return [.. Enumerable.Range(0, 2 + random.Next(10)).Select(_ => (100 * random.NextDouble(), 2 + (10 * random.NextDouble())))
            .OrderBy(w => w.Item1)];
    }

    private static double Off(IReadOnlyList<double> places, List<(double Place, double Size)> wanted) =>
        places.Zip(wanted, (place, want) => (place - want.Place) * (place - want.Place)).Sum();

    private static bool IsFree(IReadOnlyList<double> places, List<(double Place, double Size)> wanted)
    {
        const double hair = 1e-9;
        return places[0] - (wanted[0].Size / 2) >= _room.Start - hair && places[^1] + (wanted[^1].Size / 2) <= _room.End + hair
            && Enumerable.Range(1, wanted.Count - 1)
                .All(i => places[i] - places[i - 1] >= ((wanted[i].Size + wanted[i - 1].Size) / 2) - hair);
    }
}
