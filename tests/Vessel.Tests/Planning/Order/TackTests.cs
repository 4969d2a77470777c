using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class TackTests
{
    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Round_joints_are_tacked_in_opposite_pairs_and_straight_ones_at_both_ends(string file) =>
        Assert.All(Plans.Of(file).Procedures.Where(p => p.Joint.Runs.IsEmpty), weld =>
        {
            var tacks = Tacks.Of(weld.Weld);
            var places = tacks.Places;
            Assert.Equal(places.Length, places.Distinct().Count());
            if (weld.Joint.IsRound)
            {
                Assert.True(places.Length >= 4 && places.Length % 2 == 0);
                Assert.All(Enumerable.Range(0, places.Length / 2), i => Assert.Equal(180, places[(2 * i) + 1] - places[2 * i], 1e-9));
            }
            else
            {
                Assert.Equal(weld.Joint.Domain.Start, places[0]);
                // The end is a product over a quotient: to rounding.
                Assert.Equal(weld.Joint.Domain.End, places[1], 1e-9);
            }
        });

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Tacks_are_evenly_spread_and_no_wider_than_twenty_walls_or_sixty_millimetres(string file) =>
        Assert.All(Plans.Of(file).Procedures.Where(p => p.Joint.Runs.IsEmpty), weld =>
        {
            var places = Tacks.Of(weld.Weld).Places.Order().ToList();
            var steps = places.Zip(places.Skip(1)).Select(p => p.Second - p.First).ToList();
            Assert.All(steps, step => Assert.Equal(steps[0], step, 1e-9));
            var spacing = weld.Joint.IsRound ? weld.Weld.Length / places.Count : steps[0];
            Assert.InRange(spacing, 0, Math.Clamp(20 * weld.Joint.Wall, 20, 60) + 1e-6);
        });

    [Fact]
    public void A_joint_of_short_beads_needs_no_tacks() => Assert.All(
        Plans.Of("harbour-launch-breather.yaml").Procedures.Where(p => !p.Joint.Runs.IsEmpty),
        weld => Assert.Empty(Tacks.Of(weld.Weld).Places));
}
