using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Heads.Dishes;

public sealed class GoreRulesTests
{
    /// <summary>Of the shell in <see cref="GoreVessels"/>.</summary>
    private const double LongSeam = Math.PI;

    [Theory]
    [InlineData(8, 2, true)]
    [InlineData(24, 2, false)]
    [InlineData(24, 1, true)]
    public void Gores_that_are_only_bent_may_stand_off_by_half_the_wall(int count, double wall, bool found)
    {
        // 24 gores lie 1 - 0.9943 of 104 mm inside: 0.6 mm; 8 gores 5.4 mm.
        var codes = Codes(GoreVessels.Of(GoreVessels.Gores(count), wall: wall));

        Assert.Equal(found, codes.Contains(FindingCodes.GoresNeedDishing));
    }

    [Theory]
    [InlineData("aluminium 3003-H18", true)]
    [InlineData("aluminium 3003-O", false)]
    [InlineData("stainless 304", false)]
    [InlineData("aluminium 6061-T9", false)]
    public void Dishing_may_use_up_half_of_the_elongation(string metal, bool found)
    {
        // Eight gores to a small cap stretch by 3 to 4 %; half of the elongation is 2 %, 15 %, 20 %, unknown.
        var codes = Codes(GoreVessels.Of(GoreVessels.Gores(8, 40), metal));

        Assert.Equal(found, codes.Contains(FindingCodes.GoreStretch));
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(9.9, true)]
    [InlineData(-9.9, true)]
    [InlineData(10.1, false)]
    [InlineData(-10.1, false)]
    public void Gore_seams_keep_ten_millimetres_from_the_long_seam_at_the_girth(double arc, bool found)
    {
        const int count = 10;
        var seam = LongSeam + (arc / GoreVessels.Radius) - (2 * Math.PI / count * 3);

        var codes = Codes(GoreVessels.Of(GoreVessels.Gores(count, seam: seam)));

        Assert.Equal(found, codes.Contains(FindingCodes.SeamsMeet));
    }

    [Fact]
    public void The_angle_that_the_finding_names_keeps_clear()
    {
        // Half a pitch of 36 degrees past the long seam at 180, brought into the first pitch: 18.
        var vessel = GoreVessels.Of(GoreVessels.Gores(10, seam: LongSeam));
        var finding = Findings(vessel).First(f => f.Code == FindingCodes.SeamsMeet);

        Assert.Contains("'seam_angle: 18'", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(FindingCodes.SeamsMeet, Codes(GoreVessels.Of(GoreVessels.Gores(10, seam: Math.PI / 10))));
    }

    [Fact]
    public void A_shell_from_tube_has_no_seam_to_meet()
    {
        var vessel = GoreVessels.Of(GoreVessels.Gores(10, seam: LongSeam));

        var codes = Codes(vessel with { Shell = vessel.Shell with { MadeFrom = StockForm.Tube } });

        Assert.DoesNotContain(FindingCodes.SeamsMeet, codes);
    }

    [Fact]
    public void A_port_keeps_two_walls_from_the_caps_seam_and_the_finding_names_the_least_cap()
    {
        // Outside radius 105, bung radius 14: (105 asin(14 / 105) + 4) of arc; 2 x 104 sin(that / 105) = 35.6 mm.
        var near = Findings(GoreVessels.Of(GoreVessels.Gores(cap: 35), drain: 28)).Single(f => f.Code == FindingCodes.PortNearCapSeam);

        Assert.Contains("at least 36 mm", near.Message, StringComparison.Ordinal);
        Assert.Equal(["bottom-cap", "drain"], near.Parts);
        Assert.DoesNotContain(FindingCodes.PortNearCapSeam, Codes(GoreVessels.Of(GoreVessels.Gores(cap: 36), drain: 28)));
    }

    [Theory]
    [InlineData("aluminium 6061-T6", true)]
    [InlineData("aluminium 5052-H32", true)]
    [InlineData("aluminium 5052-O", false)]
    [InlineData("aluminium 5052-H112", false)]
    [InlineData("aluminium 6061", false)]
    [InlineData("stainless 316L", false)]
    public void Hard_tempers_are_neither_spun_nor_dished(string metal, bool found)
    {
        Assert.Equal(found, Codes(GoreVessels.Of(null, metal)).Contains(FindingCodes.TemperTooHard));
        Assert.Equal(found, Codes(GoreVessels.Of(GoreVessels.Gores(), metal)).Contains(FindingCodes.TemperTooHard));
    }

    [Fact]
    public void Findings_name_parts_that_exist()
    {
        var assembly = Compiler.Assemble(GoreVessels.Of(GoreVessels.Gores(6, 30, LongSeam), "aluminium 3003-H18", drain: 28));
        var ids = assembly.Parts.Select(part => part.Id).ToHashSet();

        var findings = Assessment.Of(assembly);

        Assert.Contains(findings, finding => finding.Code == FindingCodes.GoreStretch);
        Assert.All(findings, finding => Assert.All(finding.Parts, id => Assert.Contains(id, ids)));
    }

    private static ImmutableArray<Measure> Findings(VesselDesign vessel) => Assessment.Of(Compiler.Assemble(vessel));

    private static HashSet<string> Codes(VesselDesign vessel) => [.. Findings(vessel).Select(finding => finding.Code)];
}
