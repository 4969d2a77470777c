using Vessel.Design;
using Vessel.Findings;
using Vessel.Members.Straps;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Straps;

public sealed class StrapRulesTests
{
    private static readonly HashSet<string> _codes =
    [
        FindingCodes.BendTooTight, FindingCodes.WasherNearBend, FindingCodes.BeadUnderStrap, FindingCodes.UnlikeMetals,
        FindingCodes.OutsideClash,
    ];

    private static string[] Found(VesselDesign design) =>
        [.. Assessment.Of(Compiler.Assemble(design)).Select(f => f.Code).Where(_codes.Contains)];

    private static VesselDesign Rolled(StrapDesign strap, double seam) => Straps.On(strap) is var design
        ? design with { Shell = design.Shell with { MadeFrom = StockForm.Sheet, SeamAngle = seam } }
        : design;

    [Fact]
    public void A_roomy_strap_on_a_tube_is_well_advised() => Assert.Empty(Found(Straps.On(Straps.Usual)));

    [Theory]
    [InlineData(4.5, false)]
    [InlineData(4.0, true)]
    public void An_inside_radius_below_the_table_is_warned_of(double radius, bool warned) =>
        // 5052-H32 of 3 mm: between 1 t at 1/16 and 1.5 t at 1/8 in, 1.472 t.
        Assert.Equal(warned ? [FindingCodes.BendTooTight] : [], Found(Straps.On(Straps.Usual with { InsideRadius = radius })));

    [Theory]
    [InlineData(26, false)]
    [InlineData(25.9, true)]
    public void A_washer_keeps_one_thickness_off_the_bend(double ear, bool warned) =>
        // Washer 16, slot 4, 3 mm on either side.
        Assert.Equal(warned ? [FindingCodes.WasherNearBend] : [], Found(Straps.On(Straps.Usual with { Ear = ear })));

    [Fact]
    public void A_bead_under_the_band_is_warned_of_and_one_in_its_gap_is_not()
    {
        Assert.Equal([FindingCodes.BeadUnderStrap], Found(Rolled(Straps.Usual, 0.4)));
        Assert.Equal([FindingCodes.BeadUnderStrap], Found(Rolled(Straps.Usual, Straps.Usual.Angle + Math.PI)));
        // The gap of the bent ears is about 2 (2 + 3 + 5) / 63 wide at the band.
        Assert.Empty(Found(Rolled(Straps.Usual, Straps.Usual.Angle + (Math.PI / 2))));
        Assert.Empty(Found(Rolled(Straps.Usual, Straps.Usual.Angle - (Math.PI / 2) + 0.1)));
        // Twice as thick as a cap of 0.3125 x 2 mm is high.
        Assert.Empty(Found(Rolled(Straps.Usual with { Liner = 1.26 }, 0.4)));
        Assert.Equal([FindingCodes.BeadUnderStrap], Found(Rolled(Straps.Usual with { Liner = 1.24 }, 0.4)));
    }

    [Fact]
    public void Bare_steel_on_aluminium_is_warned_of_and_with_a_liner_it_is_not()
    {
        var strap = Straps.Usual with { Material = Materials.Find("stainless 304")!, InsideRadius = 7 };

        Assert.Equal([FindingCodes.UnlikeMetals], Found(Straps.On(strap)));
        Assert.Empty(Found(Straps.On(strap with { Liner = 2 })));
    }

    [Fact]
    public void Two_straps_that_run_into_each_other_clash()
    {
        var design = Straps.On(Straps.Usual);
        var other = Straps.Usual with { Path = "strap[1]", Name = "other", Height = 119 };

        Assert.Equal([FindingCodes.OutsideClash], Found(design with { Members = [Straps.Usual, other] }));
        Assert.Empty(Found(design with { Members = [Straps.Usual, other with { Height = 122 }] }));
    }
}
