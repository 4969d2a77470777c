using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// The disc that a dish is spun from, by equal area on the mean diameter (Hodgson, "Machines and Tools Employed in the Working of
/// Sheet Metals").
/// </summary>
public sealed class SpunBlanks
{
    private static double Blank(ShellDesign shell, Func<DishedHead, DishedHead> change) => 2 * Compiler.Assemble(
        Designs.Vessel(shell) with { Bottom = change(Designs.Dome(shell, "bottom")) }).Parts
        .Single(part => part.Kind == PartKind.Head).Flat!.Cut.Outer.AsCircle!.Radius;

    /// <summary>Mean diameter, straight flange, blank; the second row in inches.</summary>
    [Theory]
    [InlineData(100, 0, 2, "141.42136")]
    [InlineData(100, 10, 2, "154.91933")]
    [InlineData(4, 0.5, 0.05, "6.3245553")]
    public void Half_spheres_with_a_flange(double mean, double flange, double wall, string blank) =>
        Near.Printed(blank, Blank(Designs.Shell(mean + wall, wall, 3 * mean), head => head with { Flange = flange }));

    /// <summary>Blank over mean diameter of heads of no thickness: crown and knuckle over the diameter; 0 for the ellipsoid.</summary>
    [Theory]
    [InlineData(0, 0, "1.1748076")]
    [InlineData(1, 0.1, "1.1227158")]
    [InlineData(0.8, 0.154, "1.1769383")]
    [InlineData(1, 0.06, "1.0885104")]
    public void Shallow_dishes(double crown, double knuckle, string share)
    {
        // So thin that it moves the last digit by less than the half that is allowed.
        const double wall = 1e-6;
        var blank = Blank(Designs.Shell(100, wall), head => crown == 0
            ? new EllipsoidHead(head.Path, head.Material, wall)
            : new TorisphereHead(head.Path, head.Material, wall, 100 * crown, 100 * knuckle, null));

        Near.Printed(share, blank / 100);
    }

    /// <summary>Depth inside over the outside diameter, by the wall over it: radii stay multiples of the outside diameter.</summary>
    [Theory]
    [InlineData("DIN 28011", 0.01, "0.1888896")]
    [InlineData("DIN 28011", 0.02, "0.1841569")]
    [InlineData("DIN 28013", 0.01, "0.2482573")]
    [InlineData("DIN 28013", 0.02, "0.2422904")]
    public void Heads_named_by_their_standard_are_as_deep(string standard, double wall, string depth)
    {
        var design = Read($"torisphere, standard: {standard}, wall: {(200 * wall).ToString(CultureInfo.InvariantCulture)}, flange: 15");

        Near.Printed(depth, (HeadShape.Of(VesselEnd.Top, design)!.Depth - 15) / 200);
    }

    /// <summary>Outside 4 in, wall 0.125 in: 0.6140917 in deep.</summary>
    [Fact]
    public void A_flanged_and_dished_head_of_4_inches()
    {
        var design = Read("torisphere, standard: flanged and dished, wall: 6.25");

        Near.Absolute(0.6140917 * 50, HeadShape.Of(VesselEnd.Top, design)!.Depth, 5e-7 * 50);
    }

    private static VesselDesign Read(string top) => Compiler.Read($$"""
        vessel: Dish
        material: stainless 304
        shell: { outside_diameter: 200, wall: 2, height: 300, made_from: tube }
        top: { shape: {{top}} }
        bottom: { shape: flat, thickness: 3 }
        """).Value!;

    [Theory]
    [InlineData(40, 1)]
    [InlineData(300, 6)]
    public void The_blank_has_the_area_of_the_mean_half_sphere(double outside, double wall)
    {
        var shell = Designs.Shell(outside, wall);

        var blank = Compiler.Assemble(Designs.Vessel(shell)).Parts.Single(part => part.Kind == PartKind.Head).Flat!.Cut;

        Near.Relative(2 * Math.PI * shell.MidRadius * shell.MidRadius, CurveMeasures.Area(blank), 1e-12);
    }
}
