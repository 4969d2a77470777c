using Vessel.Design;
using Vessel.Findings;
using Vessel.Joints;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Model;

public sealed class SlipFitTests
{
    /// <summary>Sums of a few sizes of a tenth of a millimetre.</summary>
    private const double Rounding = 1e-12;

    /// <summary>
    /// A blank of pi x 108 - 1 = 338 mm in 2 mm is off by 0.35, its thickness by 0.1, the lid of 105.6 in 3 mm by 0.25; a seam 3.125 mm
    /// wide in the mean draws in a tenth of that, one that the shop knows draws in half of 0.5 more or less;
    /// 1 % out of round is 0.53 on either side.
    /// </summary>
    [Theory]
    [InlineData(0, 0.3125)]
    [InlineData(0.5, 0.25)]
    public void A_lid_in_a_rolled_shell_hangs_on_its_blank_sheet_seam_and_roundness_and_the_lids_diameter(double shrinkage, double seam)
    {
        var fit = Lid(0.2, shrinkage);

        Near.Absolute(0.4, fit.Clearance, Rounding);
        Near.Absolute(0.4 - ((0.35 + seam) / Math.PI) - 0.1 - 0.25 - 0.53, fit.Worst, Rounding);
        Near.Absolute(0.4 - Math.Sqrt(((0.35 / Math.PI) * (0.35 / Math.PI)) + ((seam / Math.PI) * (seam / Math.PI)) + 0.01 + (0.25 * 0.25)),
            fit.Likely, Rounding);
    }

    [Theory]
    // Half of sqrt((0.35 / pi)^2 + (0.3125 / pi)^2 + 0.1^2 + 0.25^2) = 0.15395.
    [InlineData(0.1539, 1)]
    [InlineData(0.154, 0)]
    public void A_lid_that_may_not_go_in_is_noted(double clearance, int count)
    {
        var shell = Designs.Shell();
        var design = Designs.Vessel(shell) with { Top = Designs.Inset(shell, "top", clearance: clearance) };

        Assert.Equal(count, Found(design));
    }

    [Theory]
    // Against a bore of a tube of stainless 110 x 2 (0.38 outside by ASTM A269, two walls 0.4) and a disc of 1.5 mm and 106.x (0.25):
    // sqrt(0.38^2 + 0.4^2 + 0.25^2) / 2 = 0.30290.
    [InlineData(-0.3030, 0)]
    [InlineData(-0.3028, 1)]
    [InlineData(0.3028, 1)]
    [InlineData(0.3030, 0)]
    public void A_disc_that_may_neither_slip_nor_hold_is_noted(double clearance, int count)
    {
        var disc = Discs.Screen("screen", 60, clearance < 0 ? Fixing.Press : Fixing.Tabs) with
        {
            Clearance = clearance,
            OutsideDiameter = 106 - (2 * clearance),
        };
        var design = Discs.Vessel([disc]) with { Ports = [] };

        Assert.Equal(count, Found(design with { Bottom = Designs.Overlay("bottom", 110), Top = Designs.Overlay("top", 110) }));
    }

    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void The_worst_case_is_never_better_than_the_likely_one(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        Assert.All(vessel.Fits, fit => Assert.True(fit.Worst <= fit.Likely && fit.Likely < fit.Clearance));
    });

    private static SlipFit Lid(double clearance, double shrinkage)
    {
        var shell = Designs.Shell() with { Rolls = RollsShop.Unknown with { SeamShrinkage = shrinkage } };
        var vessel = Compiler.Assemble(Designs.Vessel(shell) with { Top = Designs.Inset(shell, "top", clearance: clearance) });
        return Assert.Single(vessel.Fits);
    }

    private static int Found(VesselDesign design) =>
        Assessment.Of(Compiler.Assemble(design)).Count(finding => finding.Code == FindingCodes.FitUncertain);
}
