using System.Globalization;
using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>Figures of faults: to what a hand can set, and a limit never to the wrong side.</summary>
public sealed class UnitFormatTests
{
    private static readonly UnitFormat _metric = new(UserUnits.Millimetres);

    [Fact]
    public void A_limit_is_rounded_to_the_sound_side()
    {
        var random = new Random(11);
        for (var i = 0; i < 2000; i++)
        {
            var mm = Math.Exp((random.NextDouble() * 12) - 4);
            var (least, most) = (Number(_metric.LengthUp(mm)), Number(_metric.LengthDown(mm)));
            // By no more than the hand's step.
            var step = mm < 1 ? 1e-3 : mm < 3 ? 1e-2 : 0.1;
            Assert.InRange(least, mm - 1e-7, mm + step);
            Assert.InRange(most, mm - step, mm + 1e-7);
            var angle = mm / 5000;
            Assert.True(Number(_metric.AngleUp(angle)) >= (angle * 180 / Math.PI) - 1e-7);
            Assert.True(Number(_metric.AngleDown(angle)) <= (angle * 180 / Math.PI) + 1e-7);
        }
    }

    [Theory]
    [InlineData(7.172, "7.2 mm", "7.1 mm", "7.17 mm")]
    [InlineData(17, "17 mm", "17 mm", "17 mm")]
    [InlineData(2.25, "2.25 mm", "2.25 mm", "2.25 mm")]
    [InlineData(0.1234, "0.124 mm", "0.123 mm", "0.123 mm")]
    [InlineData(-7.172, "-7.1 mm", "-7.2 mm", "-7.17 mm")]
    public void Lengths_are_told_to_what_a_hand_can_set(double mm, string least, string most, string given) =>
        Assert.Equal((least, most, given), (_metric.LengthUp(mm), _metric.LengthDown(mm), _metric.Length(mm)));

    private static double Number(string text) => double.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture);
}
