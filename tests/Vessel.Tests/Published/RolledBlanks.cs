using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Blank lengths of rolled shells on the mean diameter: common practice; the check values recomputed to 20 digits.
/// </summary>
public sealed class RolledBlanks
{
    [Theory]
    [InlineData(4.000, 0.125, "12.173672")]
    [InlineData(101.6, 1.6, "314.159")]
    public void Length_on_the_mean_diameter(double outside, double wall, string length) =>
        Near.Printed(length, new RolledDevelopment(outside / 2, wall, 0.5, 0, 0).Width);

    [Fact]
    public void The_shell_is_cut_to_it_less_the_root_gap()
    {
        var vessel = Designs.Vessel(Designs.Shell(101.6, 1.6) with { RootGap = 1.2 });

        var flat = Compiler.Assemble(vessel).Parts[0].Flat!;

        Near.Printed("314.159", CurveMeasures.Bounds(flat.Cut.Outer).Width + 1.2);
    }
}
