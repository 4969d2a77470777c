using System.Collections.Immutable;
using Vessel.Planning;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class BarPackingTests
{
    /// <summary>5, 4, 4, 3, 2, 2 in 10: longest first takes 5 + 4, 4 + 3 + 2 and 2; 5 + 3 + 2 and 4 + 4 + 2 fill two bars.</summary>
    [Fact]
    public void The_search_finds_what_longest_first_misses()
    {
        var packing = BarPacking.Of([5, 4, 4, 3, 2, 2], 10, 0);

        Assert.Equal((2, 2, true), (packing.Bars.Length, packing.Bound, packing.IsProven));
    }

    [Fact]
    public void A_kerf_is_lost_between_pieces_but_not_after_the_last()
    {
        Assert.Single(BarPacking.Of([50, 49], 100, 1).Bars);
        Assert.Equal(2, BarPacking.Of([50, 50], 100, 1).Bars.Length);
    }

    [Fact]
    public void What_no_bar_holds_is_told() => Assert.Equal([1], BarPacking.Of([10, 101, 20], 100, 2).TooLong);

    [Fact]
    public void Nothing_takes_no_bar() => Assert.Equal((0, 0), (BarPacking.Of([], 100, 2).Bars.Length, BarPacking.Of([], 100, 2).Bound));

    /// <summary>Against all ways to part up to seven pieces.</summary>
    [Fact]
    public void Small_sets_are_packed_in_the_fewest_bars()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            // Not for secrets.
#pragma warning disable CA5394
            var random = new Random(seed);
            ImmutableArray<double> lengths = [.. Enumerable.Range(0, random.Next(1, 8)).Select(_ => (double)random.Next(10, 90))];
#pragma warning restore CA5394
            var packing = BarPacking.Of(lengths, 100, 3);

            Assert.Equal(Fewest(lengths, 100, 3), packing.Bars.Length);
            Assert.InRange(packing.Bound, 0, packing.Bars.Length);
            Assert.Equal(Enumerable.Range(0, lengths.Length), packing.Bars.SelectMany(b => b).Order());
            Assert.All(packing.Bars, bar => Assert.True(bar.Sum(i => lengths[i] + 3) <= 103 + 1e-9));
        }
    }

    private static int Fewest(ImmutableArray<double> lengths, double room, double kerf)
    {
        var best = lengths.Length;
        void Place(int k, List<double> bars)
        {
            if (bars.Count >= best)
                return;
            if (k == lengths.Length)
            {
                best = bars.Count;
                return;
            }

            for (var i = 0; i < bars.Count; i++)
            {
                if (bars[i] + lengths[k] + kerf <= room + kerf)
                    Place(k + 1, [.. bars[..i], bars[i] + lengths[k] + kerf, .. bars[(i + 1)..]]);
            }

            Place(k + 1, [.. bars, lengths[k] + kerf]);
        }

        Place(0, []);
        return best;
    }
}
