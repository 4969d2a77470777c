using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>ISO 9013:2017 class 1 as printed by modulusmetal.com, and ISO 2768-1 class m from web tables of it.</summary>
public sealed class CuttingToleranceTests
{
    [Theory]
    [InlineData(2, 1, 0.075)]
    [InlineData(100, 1, 0.20)]
    [InlineData(3, 1.5, 0.10)]
    [InlineData(3.1, 1.5, 0.15)]
    [InlineData(35, 2, 0.20)]
    [InlineData(120, 3, 0.25)]
    [InlineData(320, 3.15, 0.35)]
    [InlineData(320, 3.2, 0.40)]
    [InlineData(34, 6, 0.25)]
    public void Laser_cut_sheet(double size, double thickness, double off) => Assert.Equal(off, CuttingTolerances.Laser(size, thickness));

    [Theory]
    [InlineData(3, 0.1)]
    [InlineData(30, 0.2)]
    [InlineData(34, 0.3)]
    [InlineData(121, 0.5)]
    [InlineData(1500, 1.2)]
    public void Work_of_the_shop(double size, double off) => Assert.Equal(off, CuttingTolerances.Shop(size));

    [Fact]
    public void Thicker_or_larger_is_never_more_exact()
    {
        double[] sizes = [1, 5, 20, 60, 200, 900, 3000];
        double[] walls = [0.5, 2, 5, 8, 20];
        foreach (var (small, large) in sizes.Zip(sizes.Skip(1)))
            Assert.All(walls, wall => Assert.True(CuttingTolerances.Laser(small, wall) <= CuttingTolerances.Laser(large, wall)));
        foreach (var (thin, thick) in walls.Zip(walls.Skip(1)))
            Assert.All(sizes, size => Assert.True(CuttingTolerances.Laser(size, thin) <= CuttingTolerances.Laser(size, thick)));
    }
}
