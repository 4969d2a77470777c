using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

public sealed class HeadRulesTests
{
    /// <summary>All of the bottom's metal.</summary>
    private static ImmutableArray<string> Codes(HeadDesign bottom, double drain = 22)
    {
        var metal = bottom.Material;
        var shell = Designs.Shell() with { Material = metal };
        var port = Designs.OnHead("drain", VesselEnd.Bottom, drain, 2, 0) with
        {
            Joint = PortJoint.SetIn,
            InsideLength = 10,
            Material = metal,
        };
        var design = Designs.Vessel(shell, port) with { Bottom = bottom, Top = Designs.Inset(shell, "top") with { Material = metal } };
        return [.. Compiler.Assess(Compiler.Assemble(design)).Select(finding => finding.Code)];
    }

    [Theory]
    // Inside radius of bending at the tip, 11 / cos 45 = 15.56, and 10 / cos 45 = 14.14: five walls of 2.9 are 14.5.
    [InlineData(22, false)]
    [InlineData(20, true)]
    public void A_cone_is_bent_no_tighter_than_five_walls_at_its_tip(double drain, bool found) => Assert.Equal(
        found,
        Codes(new ConeHead("bottom", Designs.Stainless, 2.9, Math.PI / 4, 0, 0), drain).Contains(FindingCodes.TightRoll));

    [Theory]
    [InlineData("aluminium 6061-T6", true)]
    [InlineData("aluminium 3003-O", false)]
    public void A_dish_of_hard_sheet_is_not_spun(string metal, bool found) => Assert.Equal(
        found,
        Codes(new EllipsoidHead("bottom", Materials.Find(metal)!, 2)).Contains(FindingCodes.TemperTooHard));

    [Theory]
    [InlineData(2.51, true)]
    [InlineData(2.49, false)]
    public void A_dish_may_be_a_quarter_thicker_than_the_shell(double wall, bool found) => Assert.Equal(
        found,
        Codes(new TorisphereHead("bottom", Designs.Stainless, wall, 110, 11, null)).Contains(FindingCodes.StepAtSeam));

    [Theory]
    [InlineData(170, true)]
    [InlineData(150, false)]
    public void A_cones_seam_keeps_off_the_shells(double degrees, bool found) => Assert.Equal(
        // The shell's seam lies at 180 degrees: ten millimetres on a radius of 55 are 10.4 degrees.
        found,
        Codes(new ConeHead("bottom", Designs.Stainless, 2, Math.PI / 4, degrees * Math.PI / 180, 0)).Contains(FindingCodes.SeamsMeet));
}
