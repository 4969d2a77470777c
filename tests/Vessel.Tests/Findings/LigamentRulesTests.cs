using Vessel.Design;
using Vessel.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>Each case lies a hair to either side of its limit: two legs and a wall, all of 2 mm.</summary>
public sealed class LigamentRulesTests
{
    private const double Limit = 6;

    /// <summary>Distances are known to 0.05 mm, and the lower bound is held to the limit.</summary>
    private const double Hair = 0.06;

    [Theory]
    [InlineData(Limit - Hair, 1)]
    [InlineData(Limit + Hair, 0)]
    public void Two_branches_one_above_the_other(double between, int count) => Assert.Equal(count, Found(Designs.Vessel(
        Designs.Shell(),
        Designs.Branch("lower", 20, 2, new(60, 0, 0, 0, 0)),
        Designs.Branch("upper", 20, 2, new(60 + 20 + between, 0, 0, 0, 0)))).Count);

    [Theory]
    [InlineData(Limit - Hair, 1)]
    [InlineData(Limit + Hair, 0)]
    public void A_branch_beside_the_long_seam(double between, int count)
    {
        var shell = Designs.Shell();
        // Its side lies at asin(10 / 55) round the shell; the straight way to the seam is a chord.
        var angle = shell.SeamAngle - Math.Asin(10 / 55.0) - (2 * Math.Asin(between / 2 / 55.0));

        Assert.Equal(count, Found(Designs.Vessel(shell, Designs.Branch("side", 20, 2, new(90, angle, 0, 0, 0)))).Count);
    }

    [Theory]
    [InlineData(Limit - Hair, 1)]
    [InlineData(Limit + Hair, 0)]
    public void A_branch_above_the_bottoms_seam(double between, int count) => Assert.Equal(count, Found(Designs.Vessel(
        Designs.Shell(), Designs.Branch("low", 20, 2, new(10 + between, 0, 0, 0, 0)))).Count);

    [Theory]
    [InlineData(Limit - Hair, 1)]
    [InlineData(Limit + Hair, 0)]
    public void Two_tubes_in_a_lid(double between, int count) => Assert.Equal(count, Found(Designs.Vessel(
        Designs.Shell(),
        Designs.OnHead("left", PortHost.Top, 20, 2, 10 + (between / 2)),
        Designs.OnHead("right", PortHost.Top, 20, 2, 10 + (between / 2), Math.PI))).Count);

    [Fact]
    public void It_names_both_welds_and_where_to_look()
    {
        var finding = Assert.Single(Found(Designs.Vessel(
            Designs.Shell(),
            Designs.Branch("lower", 20, 2, new(60, 0, 0, 0, 0)),
            Designs.Branch("upper", 20, 2, new(83, 0, 0, 0, 0)))));

        Assert.Contains("lower to shell", finding.Message, StringComparison.Ordinal);
        Assert.Contains("upper to shell", finding.Message, StringComparison.Ordinal);
        Near.Absolute(3, finding.Figures[0].Value, 0.05);
    }

    private static List<Finding> Found(VesselDesign design) =>
        [.. Assessment.Of(Assembly.Of(design)).Where(finding => finding.Code == FindingCodes.LigamentTooNarrow)];
}
