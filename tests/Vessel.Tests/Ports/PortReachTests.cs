using Vessel.Design;
using Vessel.Geometry;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>A port of radius r on a tube of 110 x 2 mm, 180 mm high, its axis at 90 mm: where it meets the shell, and how far.</summary>
public sealed class PortReachTests
{
    // Lengths of at most some 100 mm and a handful of operations: rounding stays under 1e-11.
    private const double Rounding = 1e-11;

    private const double Outer = 55;

    private const double Inner = 53;

    private const double Height = 90;

    [Theory]
    [InlineData(0, 0, 16)]
    [InlineData(20, 0, 16)]
    [InlineData(-20, 30, 16)]
    [InlineData(35, -60, 12)]
    [InlineData(0, 75, 40)]
    public void Every_point_of_foot_and_hole_lies_on_both_cylinders(double offset, double tiltDeg, double around)
    {
        var opening = ShellOpening.Of(Site(offset, tiltDeg, around, angleDeg: 40));
        var (a, tilt) = (40 * Math.PI / 180, tiltDeg * Math.PI / 180);
        var foot = Math.Sqrt((Outer * Outer) - (offset * offset));
        foreach (var (outline, radius, face) in new[]
        {
            (opening.Foot, around, Outer), (opening.Outer, around - 1, Outer), (opening.Inner, around - 1, Inner),
        })
        {
            foreach (var (angle, z) in outline.Points(720))
            {
                // In the vessel's frame turned so that the port looks along +x.
                var (x, y) = (face * Math.Cos(angle - a), face * Math.Sin(angle - a));
                // From the axis: sideways, and across it in the upright plane that holds it.
                var side = y - offset;
                var across = ((z - Height) * Math.Cos(tilt)) - ((x - foot) * Math.Sin(tilt));
                Assert.Equal(radius, Math.Sqrt((side * side) + (across * across)), Rounding);
            }
        }
    }

    /// <summary>Of a level port on the axis the sides are asin(r / R) away, top and bottom r;
    /// a rise moves them by the chord's climb.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(20, 0)]
    [InlineData(0, 30)]
    [InlineData(-12, -40)]
    public void Extents_are_those_of_the_densest_outline(double offset, double tiltDeg)
    {
        const int many = 200_000;
        var opening = ShellOpening.Of(Site(offset, tiltDeg, 16));
        // A turning value of a curve bent as sharply as r is met to r (2 pi / many)^2 / 8, times what a tilt of 40 degrees stretches.
        const double close = 16 * (Turns.Full / many) * (Turns.Full / many) / 4;
        double[] heights = [.. opening.Outer.Points(many).Concat(opening.Inner.Points(many)).Select(at => at.V)];
        double[] feet = [.. opening.Foot.Points(many).Select(at => at.V)];
        double[] angles =
            [.. new[] { opening.Outer, opening.Inner, opening.Foot }.SelectMany(outline => outline.Points(many)).Select(at => at.U)];

        Assert.Equal((heights.Min(), heights.Max()), (opening.HoleHeights.Start, opening.HoleHeights.End), new Close(close));
        Assert.Equal((feet.Min(), feet.Max()), (opening.FootHeights.Start, opening.FootHeights.End), new Close(close));
        Assert.Equal((angles.Min(), angles.Max()), (opening.Angles.Start, opening.Angles.End), new Close(close));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void A_level_branch_over_the_vessels_axis_is_met_furthest_out_on_that_axis(double offset) =>
        Assert.Equal(Outer - Math.Sqrt((Outer * Outer) - (offset * offset)), Greatest(offset, 0), Rounding);

    [Fact]
    public void A_level_branch_beside_the_vessels_axis_is_met_furthest_out_on_its_near_side() =>
        Assert.Equal(Math.Sqrt((Outer * Outer) - (14 * 14)) - Math.Sqrt((Outer * Outer) - (30 * 30)), Greatest(30, 0), Rounding);

    [Theory]
    [InlineData(20)]
    [InlineData(70)]
    public void A_rising_branch_is_met_furthest_out_on_its_upper_side(double tiltDeg) =>
        Assert.Equal(16 * Math.Tan(tiltDeg * Math.PI / 180), Greatest(0, tiltDeg), Rounding);

    [Fact]
    public void A_level_tube_meets_the_far_wall_with_its_sides() =>
        Assert.Equal(Inner + Math.Sqrt((Inner * Inner) - (16 * 16)), Room(0, 0), Rounding);

    [Fact]
    public void A_falling_tube_has_the_room_of_a_rising_one() => Assert.Equal(Room(12, 40), Room(12, -40), Rounding);

    private static double Greatest(double offset, double tiltDeg) => Site(offset, tiltDeg, 16).Outside.Reaches(16).End;

    private static double Room(double offset, double tiltDeg)
    {
        var vessel = Vessel(offset, tiltDeg, 16, 0);
        var sites = PortSites.Of(vessel with { Ports = [vessel.Ports[0] with { Joint = PortJoint.SetIn, InsideLength = 1 }] });
        return InsideReach.Of(sites, sites.All[0]);
    }

    private static PortSite Site(double offset, double tiltDeg, double around, double angleDeg = 0)
    {
        var vessel = Vessel(offset, tiltDeg, around, angleDeg);
        return PortSites.Of(vessel).Of(vessel.Ports[0]);
    }

    private static VesselDesign Vessel(double offset, double tiltDeg, double around, double angleDeg)
    {
        var shell = new ShellDesign("shell", Materials.All[0], 2 * Outer, Outer - Inner, 180, StockForm.Tube, 0, 0);
        var port = Designs.Branch("port", 2 * around, 1,
            new(Height, Turns.From(angleDeg * Math.PI / 180, 0), offset, tiltDeg * Math.PI / 180, 0));
        return Designs.Vessel(shell, port);
    }

    private sealed class Close(double most) : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) =>
            Math.Abs(x.Item1 - y.Item1) <= most && Math.Abs(x.Item2 - y.Item2) <= most;

        public int GetHashCode((double, double) obj) => 0;
    }
}
