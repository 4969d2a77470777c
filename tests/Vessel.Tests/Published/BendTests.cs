using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Machinery's Handbook 31, length of a right-angled bend: 0.64 T + 1.57 R of soft steel and aluminium, 0.71 T + 1.57 R of
/// hard sheet. A neutral line kept to two figures is off by 0.005 T at most, and the bend by pi/2 times that.
/// </summary>
public sealed class BendTests
{
    [Theory]
    [InlineData(MaterialFamily.Aluminium, 0.64)]
    [InlineData(MaterialFamily.MildSteel, 0.64)]
    [InlineData(MaterialFamily.Stainless, 0.71)]
    public void A_right_angle_takes_what_the_handbook_says(MaterialFamily family, double share) =>
        Assert.Equal(share, Math.PI / 2 * Bends.NeutralLine(family).Value, Math.PI / 2 * 0.005);
}
