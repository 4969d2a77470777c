using Vessel.Design;
using Vessel.Findings;
using Vessel.Members.Saddles;
using Vessel.Stock;
using Vessel.Tests.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Brackets;

public sealed class BracketRulesTests
{
    private static readonly HashSet<string> _codes =
    [
        FindingCodes.BendTooTight, FindingCodes.HoleNearBend, FindingCodes.WasherNearBend, FindingCodes.EarGapTooWide,
        FindingCodes.EarTooFlat, FindingCodes.SeamUnderBracket,
    ];

    [Fact]
    public void A_roomy_bracket_with_level_ears_is_well_advised() => Assert.Empty(Found(BracketDesigns.On(BracketDesigns.Level)));

    [Theory]
    [InlineData(4.5, false)]
    [InlineData(4.0, true)]
    public void An_inside_radius_below_the_table_is_warned_of(double radius, bool warned)
    {
        // 5052-H32 of 3 mm: between 1 t at 1/16 and 1.5 t at 1/8 in, 1.472 t.
        var found = Found(BracketDesigns.On(BracketDesigns.Level with { InsideRadius = radius }));

        Assert.Equal(warned ? [FindingCodes.BendTooTight] : [], found.Select(f => f.Code));
    }

    [Theory]
    [InlineData(40.9, false)]
    [InlineData(41.1, true)]
    public void A_washer_keeps_one_thickness_off_the_bend(double up, bool warned)
    {
        // Straight part 80 - 16 = 64 mm; half of it, less half a washer, half a slot, less 3 mm: 32 - 8 - 2 - 3 = 19 to
        // the bolt's middle; the hole rule, 32 + 9.83 / 2 - 4.5 - 2 - 11, allows 19.4.
        var bolts = BracketDesigns.Level.Bolts with { Up = up - 3 };

        var found = Found(BracketDesigns.On(BracketDesigns.Level with { Bolts = bolts }));

        Assert.Equal(warned ? [FindingCodes.WasherNearBend] : [], found.Select(f => f.Code));
    }

    [Theory]
    [InlineData(38.8, false)]
    [InlineData(38.9, true)]
    public void A_hole_keeps_two_thicknesses_and_the_radius_off_the_bend_line(double up, bool warned)
    {
        // A washer as small as the hole leaves the rule for holes alone: 32 + pi / 4 (5 + 0.42 x 3) - 2 - 4.5 - 11 = 19.4167.
        var bolts = BracketDesigns.Level.Bolts with { Up = up, WasherDiameter = 9 };

        var found = Found(BracketDesigns.On(BracketDesigns.Level with { Bolts = bolts }));

        Assert.Equal(warned ? [FindingCodes.HoleNearBend] : [], found.Select(f => f.Code));
    }

    [Fact]
    public void Square_ears_of_a_wide_bracket_stand_off_too_far()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);

        var gap = Assert.Single(Found(design));

        // Outer corner at 35 aside, as far in as the inner corner at 32: sqrt(55^2 - 32^2 + 35^2) - 55.
        Assert.Equal(FindingCodes.EarGapTooWide, gap.Code);
        Assert.Equal(Severity.Error, gap.Severity);
        Assert.Equal(Math.Sqrt((55 * 55) - (32 * 32) + (35 * 35)) - 55, gap.Figures[0].Value, 1e-12);
    }

    [Theory]
    [InlineData(77, false)]
    [InlineData(78, true)]
    public void Past_half_a_quarter_turn_round_the_shell_ears_lie_too_flat(double width, bool warned)
    {
        // 135 deg at R sqrt 2 = 77.78 mm.
        var found = Found(BracketDesigns.On(BracketDesigns.Narrow with { Width = width }));

        Assert.Equal(warned, found.Any(f => f.Code == FindingCodes.EarTooFlat));
    }

    [Theory]
    [InlineData(SaddleEars.Sides, 0, false)]
    [InlineData(SaddleEars.Sides, 38, true)]
    [InlineData(SaddleEars.Sides, -38, true)]
    [InlineData(SaddleEars.Sides, 60, false)]
    [InlineData(SaddleEars.Ends, 0, true)]
    [InlineData(SaddleEars.Ends, 60, false)]
    public void The_long_seam_keeps_clear_of_the_ears(SaddleEars ears, double aside, bool warned)
    {
        // Ears at the sides stand from asin(32 / 55) = 35.6 to asin(35 / 55) = 39.5 deg on either side of the middle.
        var plain = BracketDesigns.On(BracketDesigns.Narrow with { Ears = ears });
        var design = plain with
        {
            Shell = plain.Shell with { MadeFrom = StockForm.Sheet, SeamAngle = plain.Saddle().Angle + (aside * Math.PI / 180) },
        };

        Assert.Equal(warned, Found(design).Any(f => f.Code == FindingCodes.SeamUnderBracket));
    }

    [Fact]
    public void Every_code_stands_in_the_table() =>
        Assert.Empty(_codes.Except(FindingCodes.All.Select(code => code.Code)));

    private static List<Measure> Found(VesselDesign design) =>
        [.. Compiler.Assess(Compiler.Assemble(design)).Where(finding => _codes.Contains(finding.Code))];

    [Theory]
    [InlineData(0, 0, 30, null, null)]
    [InlineData(90, 0, 30, null, null)]
    [InlineData(90, 44, 30, FindingCodes.EarGapTooWide, Severity.Error)]
    [InlineData(90, 15, 20, FindingCodes.EarGapTooWide, Severity.Warning)]
    [InlineData(90, 44, 30, FindingCodes.EarTooFlat, Severity.Warning)]
    public void A_plate_aside_of_the_middle_stands_off_the_shell(double roll, double offset, double width, string? code, Severity? severity)
    {
        // 2.6 mm thick, 15 aside on R 55: corners on 13.7 and 16.3, 0.70 mm off; 0.65 is a quarter of the plate, 1 the most.
        var thick = offset == 15 ? 2.6 : 5;
        var plate = BracketDesigns.Plate with { Roll = roll * Math.PI / 180, Offset = offset, Width = width, Thickness = thick };
        var found = Found(BracketDesigns.On(plate)).Where(f => f.Code is FindingCodes.EarGapTooWide or FindingCodes.EarTooFlat).ToList();

        if (code is null)
            Assert.Empty(found);
        else
            Assert.Equal(severity, found.Single(f => f.Code == code).Severity);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(25, true)]
    [InlineData(60, false)]
    public void The_long_seam_keeps_clear_of_a_plate(double aside, bool warned)
    {
        var plain = BracketDesigns.On(BracketDesigns.Plate with { Offset = 0, Width = 50 });
        var design = plain with
        {
            Shell = plain.Shell with { MadeFrom = StockForm.Sheet, SeamAngle = plain.Bracket().Angle + (aside * Math.PI / 180) },
        };

        Assert.Equal(warned, Found(design).Any(f => f.Code == FindingCodes.SeamUnderBracket));
    }
}
