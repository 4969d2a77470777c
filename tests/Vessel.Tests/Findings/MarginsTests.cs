using Vessel.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>Margins and findings come from the same figures by separate ways: they must agree.</summary>
public sealed class MarginsTests
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    public static TheoryData<string> Designs => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_margin_is_used_up_where_and_only_where_its_rule_speaks(int seed) => Agree(RandomDesigns.Built(seed));

    [Theory]
    [MemberData(nameof(Designs))]
    public void The_same_of_the_examples(string file) => Agree(Compiler.Assemble(Compiler.Read(Repository.Design(file)).Value!));

    [Theory]
    [InlineData(2, 4, true, true, 0.5)]
    [InlineData(5, 4, true, false, -0.25)]
    [InlineData(6, 4, false, true, 0.5)]
    [InlineData(3, 4, false, false, -0.25)]
    [InlineData(1, 0, false, true, null)]
    public void What_is_left_is_a_share_of_the_limit(double value, double limit, bool most, bool holds, double? free)
    {
        var margin = new Margin("gap-too-wide", "gap", value, limit, "mm", most);

        Assert.Equal((holds, free), (margin.Holds, margin.Free));
    }

    private static void Agree(Assembly assembly)
    {
        var findings = Assessment.Of(assembly);
        var margins = Margins.Of(assembly);

        Assert.NotEmpty(margins);
        Assert.All(margins.GroupBy(margin => margin.Code), group =>
        {
            var spoken = findings.Where(finding => finding.Code == group.Key).ToList();
            var broken = group.Where(margin => !margin.Holds).ToList();
            // A press fit has no clearance to be left.
            if (group.Key != FindingCodes.FitUncertain)
                Assert.Equal(spoken.Count > 0, broken.Count > 0);
            Assert.All(broken, margin => Assert.Contains(
                spoken.SelectMany(finding => finding.Figures), figure => figure.Value == margin.Value));
        });
    }
}
