using Vessel.Design;
using Vessel.Findings;
using Vessel.Joints;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Joints;

public sealed class SlipFitTests
{
    /// <summary>Sums of a few sizes of a tenth of a millimetre.</summary>
    private const double Rounding = 1e-12;

    [Fact]
    public void A_lid_in_a_rolled_shell_hangs_on_the_blanks_length_and_its_own_diameter()
    {
        // A blank of pi x 108 - 1 = 338 mm in 2 mm is off by 0.35, the lid of 105.6 in 3 mm by 0.25.
        var fit = Lid(0.2);

        Near.Absolute(0.4, fit.Clearance, Rounding);
        Near.Absolute(0.4 - (0.35 / Math.PI) - 0.25, fit.Worst, Rounding);
        Near.Absolute(0.4 - Math.Sqrt(((0.35 / Math.PI) * (0.35 / Math.PI)) + (0.25 * 0.25)), fit.Likely, Rounding);
    }

    [Theory]
    // Half of sqrt((0.35 / pi)^2 + 0.25^2) = 0.13685.
    [InlineData(0.1368, 1)]
    [InlineData(0.1369, 0)]
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

    [Fact]
    public void The_worst_case_is_never_better_than_the_likely_one()
    {
        foreach (var seed in Enumerable.Range(0, 40))
        {
            var vessel = RandomDesigns.Built(seed);
            Assert.All(SlipFits.Of(vessel.Design, vessel.Sites), fit => Assert.True(fit.Worst <= fit.Likely && fit.Likely < fit.Clearance));
        }
    }

    private static SlipFit Lid(double clearance)
    {
        var shell = Designs.Shell();
        var vessel = Assembly.Of(Designs.Vessel(shell) with { Top = Designs.Inset(shell, "top", clearance: clearance) });
        return Assert.Single(SlipFits.Of(vessel.Design, vessel.Sites));
    }

    private static int Found(VesselDesign design) =>
        Assessment.Of(Assembly.Of(design)).Count(finding => finding.Code == FindingCodes.FitUncertain);
}
