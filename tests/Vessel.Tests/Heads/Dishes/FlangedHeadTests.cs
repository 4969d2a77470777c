using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Heads.Dishes;

/// <summary>
/// Flanged plates and spun cones against elementary formulas; that they hold what every head holds is in the laws over random designs.
/// Lengths stay below 1e3 mm, areas below 1e6: a hundred roundings are 1e-8 of them.
/// </summary>
public sealed class FlangedHeadTests
{
    private const double Rounding = 1e-8;

    [Theory]
    [InlineData(10)]
    [InlineData(3)]
    [InlineData(54.9)]
    public void A_pan_is_a_disc_and_a_quarter_of_a_ring_round(double knuckle)
    {
        var pan = Domes.Pan(55, knuckle);

        // Pappus: a quarter circle's middle lies 2 r / pi out of its centre, a quarter disc's 4 r / 3 pi.
        var across = 55 - knuckle;
        Assert.Equal((Math.PI * across * across)
            + (Turns.Full * (across + (2 * knuckle / Math.PI)) * knuckle * Math.PI / 2), pan.Area, Rounding);
        Assert.Equal(
            (Math.PI * across * across * knuckle) + (Turns.Full * (across + (4 * knuckle / 3 / Math.PI)) * knuckle * knuckle * Math.PI / 4),
            pan.Volume, Rounding);
        Assert.False(pan.IsCorner(0));
    }

    [Theory]
    [InlineData(45, 8, 12)]
    [InlineData(20, 6, 6)]
    [InlineData(75, 30, 5)]
    public void A_spun_cone_is_smooth_and_its_line_stands_at_its_angle(double degrees, double nose, double knuckle)
    {
        var half = degrees * Math.PI / 180;
        var cone = Domes.Toricone(55, half, nose, knuckle);

        Assert.All([0, 1], joint => Assert.False(cone.IsCorner(joint)));
        Assert.Equal(0, (cone.End - new Point2(55, 0)).Length, Rounding);
        Assert.Equal(0, cone.Start.U, Rounding);
        var (from, to) = (cone.At(cone.Joints[0]), cone.At(cone.Joints[1]));
        Assert.Equal(Math.Tan(half), (to.U - from.U) / (to.V - from.V), Rounding);
    }

    [Fact]
    public void A_spun_cone_comes_to_the_sharp_one_as_nose_and_knuckle_vanish()
    {
        // The knuckle begins at the rim, so the corner that it rounds lies r tan(half of its turn) lower, and the cone with it. What each
        // turn of radius r cuts off a corner is of the order of r^2: twice the radius, four times the volume.
        double Lacking(double r) =>
            (Math.PI * 55 * 55 * 55 / 3) + (Math.PI * 55 * 55 * r * Math.Tan(Math.PI / 8)) - Domes.Toricone(55, Math.PI / 4, r, r).Volume;

        Assert.InRange(Lacking(0.2) / Lacking(0.1), 3.95, 4.05);
        Assert.InRange(Lacking(0.1), 0, Turns.Full * 55 * 0.1 * 0.1);
    }

    [Fact]
    public void A_turn_of_three_walls_is_taken_where_none_is_given()
    {
        const string File = """
            vessel: Chaff bin trap
            material: stainless 304
            shell: { outside_diameter: 110, wall: 2, height: 180, made_from: tube }
            top: { shape: flat, thickness: 2.5, seat: flanged, flange: 20 }
            bottom: { shape: cone, angle: 90, made_from: spinning }
            """;
        var design = DesignTexts.Good(File);

        var (pan, cone) = (Assert.IsType<FlangedFlatHead>(design.Top), Assert.IsType<ToriconeHead>(design.Bottom));
        Assert.Equal((7.5, 20), (pan.Knuckle, pan.Flange));
        Assert.Equal((6, 6, 0), (cone.Knuckle, cone.Nose, cone.Flange));
        Assert.Equal(Math.PI / 4, cone.HalfAngle, Rounding);
        // Inside depth of the pan: flange and knuckle.
        Assert.Equal(27.5, HeadShape.Of(VesselEnd.Top, design)!.Depth, Rounding);
    }
}
