using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// The disc that a half sphere is spun from: sqrt 2 of the mean diameter, by equal area (Hodgson, "Machines and Tools
/// Employed in the Working of Sheet Metals").
/// </summary>
public sealed class SpunBlanks
{
    [Fact]
    public void Half_sphere_of_mean_diameter_100()
    {
        var vessel = Designs.Vessel(Designs.Shell(102));

        var blank = Assembly.Of(vessel).Parts.Single(part => part.Kind == PartKind.Head).Flat!.Cut.Outer.AsCircle!;

        Near.Printed("141.42136", 2 * blank.Radius);
    }

    [Theory]
    [InlineData(40, 1)]
    [InlineData(300, 6)]
    public void The_blank_has_the_area_of_the_mean_half_sphere(double outside, double wall)
    {
        var shell = Designs.Shell(outside, wall);

        var blank = Assembly.Of(Designs.Vessel(shell)).Parts.Single(part => part.Kind == PartKind.Head).Flat!.Cut;

        Near.Relative(2 * Math.PI * shell.MidRadius * shell.MidRadius, CurveMeasures.Area(blank), 1e-12);
    }
}
