using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Heads.Cones;
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
        Designs.OnHead("left", VesselEnd.Top, 20, 2, 10 + (between / 2)),
        Designs.OnHead("right", VesselEnd.Top, 20, 2, 10 + (between / 2), Math.PI))).Count);

    /// <summary>The port at the pole ends the seam, and is none of these.</summary>
    [Theory]
    [InlineData(Limit - Hair, 1)]
    [InlineData(Limit + Hair, 0)]
    public void A_tube_beside_the_seam_of_a_cone(double between, int count)
    {
        // The foot of an upright tube 30 from the axis, and a line of the cone so far round from it; by bisection.
        var half = Math.PI / 3;
        Vector3 Foot(double phi) =>
            new Point2(30, 0) + Point2.Polar(10, phi) is var at ? new(at.U, at.V, at.Length / Math.Tan(half)) : default;
        double Apart(double round) => Enumerable.Range(0, 7200).Min(i => Foot(i * Math.PI / 3600)
            .Cross(new(Math.Sin(half) * Math.Cos(round), Math.Sin(half) * Math.Sin(round), Math.Cos(half))).Length);
        var (near, far) = (Math.Asin(10 / 30.0), Math.PI / 2);
        for (var i = 0; i < 40; i++)
            (near, far) = (near + far) / 2 is var middle && Apart(middle) < between ? (middle, far) : (near, middle);

        var design = Designs.Vessel(
            Designs.Shell(),
            Designs.OnHead("drain", VesselEnd.Bottom, 20, 2, 0),
            Designs.OnHead("side", VesselEnd.Bottom, 20, 2, 30));
        Assert.Equal(count, Found(design with { Bottom = new ConeHead("bottom", Designs.Stainless, 2, half, near, 0) }).Count);
    }

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

    private static List<Measure> Found(VesselDesign design) =>
        [.. Assessment.Of(Compiler.Assemble(design)).Where(finding => finding.Code == FindingCodes.LigamentTooNarrow)];
}
