using Vessel.Design;
using Vessel.Ports;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class BranchAxisTests
{
    // Lengths of at most some 100 mm and a handful of operations: rounding stays under 1e-11.
    private const double Rounding = 1e-11;

    [Theory]
    [InlineData(0, 0, 16)]
    [InlineData(20, 0, 16)]
    [InlineData(-20, 30, 16)]
    [InlineData(35, -60, 12)]
    [InlineData(0, 75, 40)]
    public void Every_point_lies_on_both_cylinders(double offset, double tiltDeg, double around)
    {
        var axis = Axis(offset, tiltDeg, angleDeg: 40);
        var (a, t) = (axis.Place.Angle, axis.Place.Tilt);
        var foot = Math.Sqrt((55 * 55) - (offset * offset));
        foreach (var phi in BranchAxis.Phis())
        {
            var (angle, z) = axis.OnCylinder(55, around, phi);
            // In the vessel's frame turned so that the port looks along +x.
            var (x, y) = (55 * Math.Cos(angle - a), 55 * Math.Sin(angle - a));
            // From the axis: sideways, and across it in the upright plane that holds it.
            var side = y - offset;
            var across = ((z - 90) * Math.Cos(t)) - ((x - foot) * Math.Sin(t));
            Assert.Equal(around, Math.Sqrt((side * side) + (across * across)), Rounding);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void A_level_branch_over_the_vessels_axis_is_met_furthest_out_on_that_axis(double offset) =>
        Assert.Equal(55 - Math.Sqrt((55 * 55) - (offset * offset)), Axis(offset, 0).GreatestReach(16), 1e-3);

    [Fact]
    public void A_level_branch_beside_the_vessels_axis_is_met_furthest_out_on_its_near_side() =>
        Assert.Equal(Math.Sqrt((55 * 55) - (14 * 14)) - Math.Sqrt((55 * 55) - (30 * 30)), Axis(30, 0).GreatestReach(16), Rounding);

    [Theory]
    [InlineData(20)]
    [InlineData(70)]
    public void A_rising_branch_is_met_furthest_out_on_its_upper_side(double tiltDeg) =>
        Assert.Equal(16 * Math.Tan(tiltDeg * Math.PI / 180), Axis(0, tiltDeg).GreatestReach(16), Rounding);

    [Fact]
    public void A_level_tube_meets_the_far_wall_with_its_sides() =>
        Assert.Equal(53 + Math.Sqrt((53 * 53) - (16 * 16)), Axis(0, 0).GreatestInsideLength(16), Rounding);

    [Fact]
    public void A_falling_tube_has_the_room_of_a_rising_one() =>
        Assert.Equal(Axis(12, 40).GreatestInsideLength(16), Axis(12, -40).GreatestInsideLength(16), Rounding);

    private static BranchAxis Axis(double offset, double tiltDeg, double angleDeg = 0) => new(
        new ShellDesign("shell", Materials.All[0], 110, 2, 180, StockForm.Tube, 0, 0).At(90),
        new PortPlace(90, angleDeg * Math.PI / 180, offset, tiltDeg * Math.PI / 180, 0));
}
