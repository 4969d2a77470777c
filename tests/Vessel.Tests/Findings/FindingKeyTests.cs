using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

public sealed class FindingKeyTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    /// <summary>Every key that a file has is known, and a misspelt one or one of another mapping is not.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Every_written_key_exists_and_none_beside_them(string file)
    {
        var written = Plans.Of(file).Assembly.Design.Places.Keys.Where(path => path.Length > 0).ToList();

        Assert.All(written, path => Assert.True(KeyPaths.Exist(path), path));
        Assert.All(written.Where(path => !path.StartsWith("dimensions", StringComparison.Ordinal)),
            path => Assert.False(KeyPaths.Exist(path + "x"), path));
        Assert.False(KeyPaths.Exist("shell.thread"));
        Assert.False(KeyPaths.Exist("shell[0].wall"));
        Assert.False(KeyPaths.Exist("bracket.ears.left"));
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Every_measure_of_every_design_goes_back_to_a_key_of_the_file(string file) =>
        AssertKeys(Assessment.Measures(Plans.Of(file)));

    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void So_does_every_measure_of_random_vessels(int seed) =>
        RandomDesigns.Hold(seed, vessel => AssertKeys(Assessment.Measures(vessel)));

    /// <summary>The gap of a screen is its clearance's doing, not that of how it is fixed.</summary>
    [Theory]
    [InlineData("inside.discs[0].clearance=1.5", "inside.discs[0].clearance")]
    [InlineData("top.clearance=1.5", "top.clearance")]
    [InlineData("shell.root_gap=1.5", "shell.root_gap")]
    public void A_wide_gap_points_at_the_key_that_sets_it(string with, string key)
    {
        var plan = Plans.OfText(Repository.Design(Launch), with);
        var finding = Assert.Single(Assessment.Of(plan.Assembly), finding => finding.Code == FindingCodes.GapTooWide);

        Assert.Equal(key, finding.Place!.Path);
        Assert.Equal(plan.Assembly.Design.Places[key], finding.At);
    }

    /// <summary>On 6 mm half the wall is 3 mm and a quarter 1.5, but no more than 1 mm is taken on any wall:
    /// so no more is aimed for.</summary>
    [Fact]
    public void What_is_aimed_for_is_never_more_than_the_most()
    {
        var shop = Shop.Usual.Welding;

        Assert.All(Enumerable.Range(1, 60).Select(i => i / 2.0), wall => Assert.True(RootGap.Aim(wall, shop) <= RootGap.Most(wall, shop)));
        Assert.Equal("aim for 0.5 mm, no more than 1 mm", RootGap.Limits(2, shop, NoteText.Length, "mm"));
        Assert.Equal("no more than 1 mm", RootGap.Limits(6, shop, NoteText.Length, "mm"));
    }

    private static void AssertKeys(IEnumerable<Measure> measures) =>
        Assert.All(measures,
            measure => Assert.True(measure.Place is { } place && KeyPaths.Exist(place.Path), $"{measure.Code} at {measure.Place?.Path}"));
}
