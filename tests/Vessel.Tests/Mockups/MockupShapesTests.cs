using Vessel.Design;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Mockups;

/// <summary>Shapes whose volumes and sections are closed forms.</summary>
public sealed class MockupShapesTests
{
    [Theory]
    [InlineData(4, 0, 0)]
    [InlineData(-3, 20, 0)]
    [InlineData(0, -10, 0.4)]
    public void A_branch_over_the_seam_of_a_half_sphere_prints(double height, double offset, double tilt)
    {
        // No shell is welded so, but the outline is smooth there and the footprint crosses it.
        var vessel = Compiler.Assemble(Designs.Vessel(
            Designs.Shell(), Designs.Branch("seam", 32, 2, new(60, 0, 0, 0, 0)), Designs.OnHead("vent", VesselEnd.Top, 20, 2, 0)));
        var port = vessel.Design.Ports[0] with { Place = new(height, 0, offset, tilt, 0), Length = 60 };
        var design = vessel.Design with { Ports = vessel.Design.Ports.SetItem(0, port) };
        var site = PortSites.Of(design).Of(port);
        var plan = MockupPlan.Of(design, vessel.Chamber, [site, vessel.Sites[1]], vessel.Members);

        Assert.Empty(plan.Obstacles);
        var mockup = Mockup.Of(plan);

        MeshLaws.Hold(mockup.Mesh, 1);
        var without = MockupVolume.Of(vessel) - (Tube(vessel.Sites[0], 55, 16) - Tube(vessel.Sites[0], 53, 14));
        Near.Absolute(without + Tube(site, 55, 16) - Tube(site, 53, 14), mockup.Mesh.Volume, mockup.Mesh.Area * mockup.Chord);
    }

    /// <summary>
    /// Of a round bar from its free end to a cylinder of a radius that a half sphere goes on below z = 0: where the line is on either,
    /// the other lies behind it or is not reached.
    /// </summary>
    private static double Tube(PortSite site, double radius, double bar) => Quadrature.Disc(bar, (r, phi) =>
    {
        var (point, way) = (site.Frame.ToOuter(Footprint.OnLine(r, phi, 0)), site.Frame.Z);
        double Root(double a, double b, double c) => (-b + Math.Sqrt((b * b) - (a * c))) / a;
        var onCylinder = Root(
            1 - (way.Z * way.Z), (point.X * way.X) + (point.Y * way.Y), (point.X * point.X) + (point.Y * point.Y) - (radius * radius));
        var onSphere = Root(1, point.Dot(way), point.Dot(point) - (radius * radius));
        return site.Port.Length - (point.Z + (onCylinder * way.Z) >= 0 ? onCylinder : onSphere);
    });

    [Fact]
    public void A_section_through_the_axis_has_the_area_of_its_outline()
    {
        var vessel = Compiler.Assemble(Designs.Sound);
        var mockup = Mockup.Of(vessel.Mockup);
        // Past the inlet, through outlet and drain. The print stands aside from the vessel's frame: the axis goes through the
        // middle of the lid's flat, 55 mm from the least x and y that the shell reaches.
        var low = new Vector3(-55, -55, vessel.Mockup.Outside.Start.V - 8);
        var plane = new Frame3(-low, new(0, 1, 0), Vector3.UnitZ, new(1, 0, 0));

        var area = PlaneCut.Of(mockup.Mesh, plane).Area;

        double Circle(double radius, double x) =>
            ((x * Math.Sqrt((radius - x) * (radius + x))) + (radius * radius * Math.Asin(x / radius))) / 2;
        var bore = Designs.Thread.TapDrill / 2;
        var dome = (Math.PI / 2 * ((55 * 55) - (53 * 53))) - (2 * (Circle(55, bore) - Circle(53, bore)));
        var drain = 2 * (((11 - bore) * 63) - (Circle(55, 11) - Circle(55, bore)));
        var exact = dome + drain + (2 * 2 * 180) + (3 * 2 * (53 - 14)) + (2 * 2 * 50);
        // Each outline within a chord of the true one.
        Near.Absolute(exact, area, mockup.Chord * 2 * ((2 * 180) + (Math.PI * 54) + 200));
    }
}
