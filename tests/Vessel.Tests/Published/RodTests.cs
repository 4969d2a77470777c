using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// ESAB Aluminum Technical Guide: feet of aluminium rod in a pound, 290, 130 and 70 for 1/16, 3/32 and 1/8 in. Printed to
/// two figures, and for alloys from 2.64 to 2.70 g/cm3: within 5 percent.
/// </summary>
public sealed class RodTests
{
    private const double Pound = 453.59237;

    [Theory]
    [InlineData(0, 290), InlineData(1, 130), InlineData(2, 70)]
    public void Feet_of_aluminium_rod_in_a_pound(int rod, double feet)
    {
        var rodsInAPound = Pound / Rods.All[rod].Mass(Fillers.Er4043);

        Assert.Equal(feet / 3, rodsInAPound, feet / 3 * 0.05);
    }
}
