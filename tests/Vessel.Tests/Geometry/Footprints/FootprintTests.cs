using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>Footprints against the surfaces themselves.</summary>
public sealed class FootprintTests
{
    private const double R = 55;

    private static IEnumerable<double> Round() => Enumerable.Range(0, 360).Select(i => Turns.Full * (i + 0.25) / 360);

    public static TheoryData<double, double> Cylinders => new() { { 0, 0 }, { 20, 0.5 }, { -30, -1 }, { 39, 0 }, { 38.999, 1 } };

    private static CylinderFootprint Cylinder(double offset, double tilt) => new CylinderFootprint(R, R, offset, tilt);

    private static IEnumerable<Footprint> All() =>
        Cylinders.Select(row => (Footprint)Cylinder(row.Data.Item1, row.Data.Item2))
            .Concat(
                [new SphereFootprint(R, R, 0), new SphereFootprint(R, R, 25), new SphereFootprint(R - 3, R, 30), new PlaneFootprint(-3)]);

    [Fact]
    public void Meeting_points_lie_on_their_surface()
    {
        foreach (var footprint in All())
            Assert.All(Round(), phi => Near.Absolute(0, footprint.Distance(footprint.At(16, phi)), 1e-10));
    }

    [Fact]
    public void Distance_grows_by_one_along_the_normal()
    {
        foreach (var footprint in All())
        {
            Assert.All(Round(), phi =>
            {
                var normal = footprint.Normal(16, phi);
                Near.Absolute(1, normal.Length, 1e-12);
                Near.Absolute(2, footprint.Distance(footprint.At(16, phi) + (2 * normal)), 1e-10);
            });
        }
    }

    [Fact]
    public void Slopes_are_those_of_the_points()
    {
        foreach (var footprint in All())
        {
            Assert.All(Round(), phi =>
            {
                const double h = 1e-5;
                var quotient = (1 / (2 * h)) * (footprint.At(15, phi + h) - footprint.At(15, phi - h));
                // h^2 times the third derivative, which near a tangent line is some hundred times the size.
                Assert.True((quotient - footprint.PathSlope(15, phi)).Length < 1e-5, $"{footprint} {phi}");
            });
        }
    }

    [Fact]
    public void The_governing_radius_reaches_furthest()
    {
        foreach (var footprint in All())
        {
            Assert.All(Round(), phi =>
            {
                var governing = footprint.GoverningRadius(12, 16, phi);
                Assert.InRange(governing, 12, 16);
                Near.Absolute(-Convex.Least(r => -footprint.Reach(r, phi), 12, 16), footprint.Reach(governing, phi), 1e-9);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Cylinders))]
    public void Mirrored_offset_mirrors_the_path(double offset, double tilt) => Assert.All(Round(), phi =>
    {
        var (a, b) = (Cylinder(offset, tilt).At(16, phi), Cylinder(-offset, tilt).At(16, -phi));
        Assert.True((a - (b with { Y = -b.Y })).Length < 1e-10);
    });

    [Fact]
    public void A_tiny_branch_leaves_a_circle()
    {
        const double r = 1e-3;
        // The sagitta of the shell over the branch.
        Assert.All(Round(), phi => Near.Absolute(0, Cylinder(0, 0).Reach(r, phi), r * r / (2 * R) * 1.000001));
    }

    [Fact]
    public void Equal_radii_leave_a_saddle_as_deep_as_the_radius() =>
        Near.Absolute(R, Cylinder(0, 0).Reach(R, 0) - Cylinder(0, 0).Reach(R, Math.PI / 2), 1e-9);

    [Fact]
    public void A_port_at_the_pole_meets_a_sphere_in_a_circle()
    {
        // Pythagoras.
        Assert.All(Round(), phi => Near.Absolute(Math.Sqrt((R * R) - 256) - R, new SphereFootprint(R, R, 0).Reach(16, phi), 1e-12));
    }

    [Fact]
    public void A_port_off_the_pole_is_symmetric_and_deepest_on_the_far_side()
    {
        var sphere = new SphereFootprint(R, R, 25);
        Assert.All(Round(), phi =>
        {
            Near.Absolute(sphere.Reach(16, phi), sphere.Reach(16, -phi), 1e-12);
            Assert.InRange(sphere.Reach(16, phi), sphere.Reach(16, 0), sphere.Reach(16, Math.PI));
        });
        Assert.True(sphere.Reach(16, 0) < sphere.Reach(16, Math.PI));
    }
}
