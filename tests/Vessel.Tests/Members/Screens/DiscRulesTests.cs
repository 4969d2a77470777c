using Vessel.Design;
using Vessel.Findings;
using Vessel.Members.Screens;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Screens;

public sealed class DiscRulesTests
{
    private static readonly ScreenDesign _low = Discs.Screen("low", 60);

    private static readonly ScreenDesign _high = Discs.Screen("high", 90);

    [Fact]
    public void A_sound_pair_of_screens_with_packing_gives_no_finding_of_discs()
    {
        var codes = Codes(Discs.Vessel([_low, _high], [Discs.Wool("low", "high")]));

        Assert.Empty(codes.Intersect(
            [FindingCodes.LooseDisc, FindingCodes.PackingWithoutScreen, FindingCodes.UnlikeMetals, FindingCodes.WebTooNarrow,
                FindingCodes.HoleTooSmallToCut]));
    }

    [Theory]
    [InlineData("low", null, "above")]
    [InlineData(null, "high", "below")]
    [InlineData(null, null, "below or above")]
    public void Packing_wants_a_screen_on_both_sides(string? lower, string? upper, string where)
    {
        var finding = Find(FindingCodes.PackingWithoutScreen, Discs.Vessel([_low, _high], [Discs.Wool(lower, upper)])).Single();

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains($"no screen {where}:", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_loose_disc_is_noted() =>
        Assert.Equal(Severity.Note, Find(FindingCodes.LooseDisc, Discs.Vessel([_low with { Fixed = Fixing.Loose }])).Single().Severity);

    [Fact]
    public void Aluminium_against_stainless_is_a_warning()
    {
        var disc = _low with { Material = Materials.Find("aluminium 5052")!, Fixed = Fixing.Press };

        Assert.Equal(Severity.Warning, Find(FindingCodes.UnlikeMetals, Discs.Vessel([disc])).Single().Severity);
    }

    [Fact]
    public void Stainless_against_mild_steel_is_a_note()
    {
        var disc = _low with { Material = Materials.Find("mild steel")!, Fixed = Fixing.Press };

        Assert.Equal(Severity.Note, Find(FindingCodes.UnlikeMetals, Discs.Vessel([disc])).Single().Severity);
    }

    [Fact]
    public void Copper_wool_in_an_aluminium_screen_is_a_warning_for_each_disc_that_it_touches()
    {
        var aluminium = Materials.Find("aluminium 5052")!;
        var wool = Discs.Wool("low", "high") with { Material = "copper wool", Family = null };
        var design = Discs.Vessel(
            [_low with { Material = aluminium, Fixed = Fixing.Press }, _high with { Material = aluminium, Fixed = Fixing.Press }], [wool]);

        var findings = Find(FindingCodes.UnlikeMetals, design)
            .Where(f => f.Message.StartsWith("packing", StringComparison.Ordinal)).ToList();

        Assert.Equal(["high", "low"], findings.Where(f => f.Severity == Severity.Warning).Select(f => f.Parts[0]).Order());
    }

    [Fact]
    public void Packing_of_an_unknown_stuff_says_nothing_of_metals()
    {
        var wool = Discs.Wool("low", "high") with { Material = "glass fibre", Family = null };

        Assert.Empty(Find(FindingCodes.UnlikeMetals, Discs.Vessel([_low, _high], [wool])));
    }

    [Theory]
    [InlineData(3, 4.4, true)]
    [InlineData(3, 4.6, false)]
    public void A_web_below_the_thickness_is_a_warning(double diameter, double pitch, bool found)
    {
        // 1.4 and 1.6 mm in 1.5 mm sheet.
        var disc = _low with { Holes = _low.Holes with { HoleDiameter = diameter, Pitch = pitch } };

        Assert.Equal(found, Codes(Discs.Vessel([disc])).Contains(FindingCodes.WebTooNarrow));
    }

    [Theory]
    [InlineData(1.6, null)]
    [InlineData(1.4, Severity.Warning)]
    [InlineData(0.7, Severity.Error)]
    public void Holes_below_the_thickness_are_a_warning_and_below_half_of_it_an_error(double diameter, Severity? severity)
    {
        var disc = _low with { Holes = _low.Holes with { HoleDiameter = diameter } };

        Assert.Equal(severity, Find(FindingCodes.HoleTooSmallToCut, Discs.Vessel([disc])).SingleOrDefault()?.Severity);
    }

    private static List<Measure> Find(string code, VesselDesign design) =>
        [.. Assessment.Of(Compiler.Assemble(design)).Where(finding => finding.Code == code)];

    private static List<string> Codes(VesselDesign design) => [.. Assessment.Of(Compiler.Assemble(design)).Select(finding => finding.Code)];
}
