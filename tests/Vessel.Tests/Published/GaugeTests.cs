using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// The formulas behind the three gauge systems against the published decimals, which are rounded to 0.0001 in: half of
/// that is the tolerance, and a half itself may have gone either way.
/// </summary>
public sealed class GaugeTests
{
    private const double HalfOfLastDigit = 0.00005 + 1e-9;

    [Theory]
    [InlineData(8), InlineData(10), InlineData(11), InlineData(12), InlineData(13), InlineData(14)]
    [InlineData(16), InlineData(18), InlineData(20), InlineData(22), InlineData(24)]
    public void Brown_and_sharpe_is_a_geometric_series(int gauge) =>
        Assert.Equal(0.005 * Math.Pow(92, (36 - gauge) / 39.0), Inches(MaterialFamily.Aluminium, gauge), HalfOfLastDigit);

    /// <summary>Weights: Manufacturers' Standard Gauge, lb/ft2; steel of 41.820 lb/ft2 for each inch.</summary>
    [Theory]
    [InlineData(8, 6.875), InlineData(10, 5.625), InlineData(11, 5.0), InlineData(12, 4.375), InlineData(13, 3.75)]
    [InlineData(14, 3.125), InlineData(16, 2.5), InlineData(18, 2.0), InlineData(20, 1.5), InlineData(22, 1.25), InlineData(24, 1.0)]
    public void Steel_gauge_is_a_weight_over_41_82(int gauge, double pounds) =>
        Assert.Equal(pounds / 41.820, Inches(MaterialFamily.MildSteel, gauge), HalfOfLastDigit);

    /// <summary>The same weights of the old United States Standard gauge, at 40 lb/ft2 for each inch.</summary>
    [Theory]
    [InlineData(8, 6.875), InlineData(10, 5.625), InlineData(11, 5.0), InlineData(12, 4.375), InlineData(13, 3.75)]
    [InlineData(14, 3.125), InlineData(16, 2.5), InlineData(18, 2.0), InlineData(20, 1.5), InlineData(22, 1.25), InlineData(24, 1.0)]
    public void Stainless_gauge_is_that_weight_over_40(int gauge, double pounds) =>
        Assert.Equal(pounds / 40, Inches(MaterialFamily.Stainless, gauge), HalfOfLastDigit);

    private static double Inches(MaterialFamily family, int gauge) => Gauges.Thickness(family, gauge)!.Value / 25.4;
}
