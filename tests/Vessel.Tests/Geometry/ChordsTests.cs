using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class ChordsTests
{
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.01)]
    [InlineData(0.0004)]
    public void No_chord_of_a_circle_stands_off_further_than_asked(double deviation)
    {
        var points = Chords.Of(Loop2.Circle(new(3, 4), 40), deviation);

        // The middle of a chord is where it stands off most.
        Assert.All(points.Zip(points.Skip(1).Append(points[0])), chord =>
            Assert.True(40 - ((0.5 * (chord.First + chord.Second)) - new Point2(3, 4)).Length <= deviation * (1 + 1e-9)));
    }

    [Fact]
    public void A_quarter_of_the_deviation_takes_about_twice_the_chords()
    {
        var saddle = new Loop2([.. Curves.Saddle(62, 20, 18).Edges]);
        var (coarse, fine) = (Chords.Of(saddle, 0.004).Length, Chords.Of(saddle, 0.001).Length);

        // Halving pieces lets the number lag behind by up to a factor of the square root of two either way.
        Assert.InRange((double)fine / coarse, Math.Sqrt(2), 2 * Math.Sqrt(2));
    }

    [Fact]
    public void Their_length_falls_short_of_the_curve_by_little()
    {
        var saddle = Curves.Saddle(62, 20, 18);
        var points = Chords.Of(saddle, 0.001);
        var length = points.Zip(points.Skip(1).Append(points[0])).Sum(pair => (pair.Second - pair.First).Length);
        var exact = CurveMeasures.Length(saddle);

        // A chord of sagitta s and length c is 8 s^2 / 3 c shorter than its arc.
        var shortest = points.Zip(points.Skip(1)).Min(pair => (pair.Second - pair.First).Length);
        Assert.InRange(exact - length, 0, points.Length * 8 * 1e-6 / (3 * shortest));
    }
}
