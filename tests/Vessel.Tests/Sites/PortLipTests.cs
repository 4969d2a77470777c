using Vessel.Design;
using Vessel.Joints;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Sites;

public sealed class PortLipTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void Centred_the_lip_is_the_share_by_which_a_radial_wall_narrows(double wall)
    {
        var (vessel, site) = Designs.Tee(55, 16, 2, shellWall: wall);

        // At the flank: 14 on the outer face becomes 14 x inner / outer.
        Near.Relative(14 * wall / 55, PortLip.Of(site, vessel), 1e-12);
    }

    [Fact]
    public void Tilted_the_lip_is_what_the_wall_hides_of_the_slope()
    {
        var (vessel, site) = Designs.Tee(55, 16, 2, tilt: 0.5, shellWall: 3);

        // In the plane through the axis a wall of 3 square to the shell leans by the tilt.
        Near.Relative(3 * Math.Sin(0.5), PortLip.Of(site, vessel), 1e-12);
    }

    [Fact]
    public void A_drilled_hole_leaves_none()
    {
        var (vessel, site) = Designs.Tee(55, 16, 2, 20, shellWall: 3, madeFrom: StockForm.Tube);

        Assert.Equal(0, PortLip.Of(site, vessel));
    }
}
