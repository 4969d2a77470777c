using Vessel.Design;
using Vessel.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>A wide disc low down, and a tube that reaches in above it, beside a narrow sleeve.</summary>
public sealed class InsertionRulesTests
{
    // Of the shell's bore of 53 radius the disc leaves 3; the tube's middle line reaches it after those.
    [Theory]
    [InlineData(2.99, 120, 0)]
    [InlineData(3.01, 120, 1)]
    // Below the disc nothing passes the tube.
    [InlineData(20, 30, 0)]
    public void A_tube_in_the_way_of_a_disc(double insideLength, double height, int count)
    {
        var inlet = Designs.Branch("inlet", 20, 2, new(height, 0, 0, 0, 0)) with { Joint = PortJoint.SetIn, InsideLength = insideLength };
        var disc = Discs.Screen("baffle", 60) with { OutsideDiameter = 100, Bore = 0 };
        var design = Designs.Vessel(Designs.Shell(), inlet) with { Members = [disc] };

        var found = Assessment.Of(Compiler.Assemble(design)).Where(finding => finding.Code == FindingCodes.InsertBeforePort).ToList();

        Assert.Equal(count, found.Count);
        Assert.All(found, finding => Near.Absolute(3, finding.Figures[0].Limit!.Value.Aim, 1e-9));
    }
}
