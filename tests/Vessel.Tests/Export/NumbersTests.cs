using Vessel.Export;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class NumbersTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-4e-7, "0")]
    [InlineData(6e-7, "0.000001")]
    [InlineData(-1.5, "-1.5")]
    [InlineData(100, "100")]
    [InlineData(1e21, "1000000000000000000000")]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(123456.789, "123456.789")]
    public void Figures_are_written_shortest_to_a_millionth(double value, string text) => Assert.Equal(text, Numbers.Text(value));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_never_written(double value) => Assert.Throws<ArgumentException>(() => Numbers.Text(value));

    [Fact]
    public void A_negative_trifle_rounds_to_zero_without_a_sign() => Assert.False(double.IsNegative(Numbers.Rounded(-1e-9)));
}
