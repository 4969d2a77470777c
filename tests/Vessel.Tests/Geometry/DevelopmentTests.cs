using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class DevelopmentTests
{
    private static readonly RolledDevelopment _rolled = new(55, 2, 0.5, 3, 1);

    [Theory]
    [InlineData(3.1)]
    [InlineData(5)]
    [InlineData(9.2)]
    public void Rolling_undoes_unrolling(double angle)
    {
        var back = _rolled.Raise(_rolled.Flatten(new(angle, 40)));

        Near.Absolute(0, Turns.Signed(back.U - angle), 1e-14);
        Assert.Equal(40, back.V);
    }

    [Fact]
    public void Both_edges_of_the_blank_stand_half_a_gap_from_the_seam()
    {
        var half = 0.5 / 54;

        Near.Absolute(3 + half, _rolled.Raise(default).U, 1e-14);
        Near.Absolute(3 + (2 * Math.PI) - half, _rolled.Raise(new(_rolled.Width, 0)).U, 1e-14);
    }

    [Fact]
    public void A_wrap_keeps_lengths_of_the_outside()
    {
        var wrapped = new WrappedDevelopment(16, 1, 5);

        Assert.Equal(16 * 0.5, wrapped.Flatten(new(1.5, 0)).U, 12);
        Assert.Equal(new Point2(1, -5), wrapped.Raise(default));
        Near.Absolute(16 * Math.PI, wrapped.Flatten(new(1 - Math.PI, 0)).U, 1e-12);
    }
}
