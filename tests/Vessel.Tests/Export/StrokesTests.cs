using Vessel.Export;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class StrokesTests
{
    private const string Promised = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,-+/():x#%\u00B0";

    [Fact]
    public void A_capital_is_as_high_as_asked_and_stands_round_the_centre()
    {
        var box = Box("H", new(10, 20), 6, 0);

        Assert.Equal(17, box.Min.V, 1e-12);
        Assert.Equal(23, box.Max.V, 1e-12);
        Assert.Equal(10, (box.Min.U + box.Max.U) / 2, 1e-12);
    }

    [Fact]
    public void Every_letter_that_is_promised_is_there() =>
        Assert.All(Promised, letter => Assert.NotEqual(Shape('\u4E00'), Shape(letter)));

    [Fact]
    public void No_two_letters_look_alike()
    {
        var shapes = Promised.Where(letter => letter is not (>= 'a' and <= 'z')).Select(Shape).ToList();

        Assert.Equal(shapes.Count, shapes.Distinct().Count());
    }

    [Fact]
    public void No_stroke_stands_still()
    {
        var strokes = Strokes.Of(Promised, default, 5, 0.3);

        Assert.All(strokes, stroke => Assert.All(stroke.Zip(stroke.Skip(1)), pair => Assert.True((pair.Second - pair.First).Length > 0.1)));
    }

    [Fact]
    public void Text_reads_along_its_angle()
    {
        // Straight up: what went right goes up, and what went up goes left.
        var level = Strokes.Of("L-7", default, 5, 0).SelectMany(stroke => stroke);
        var upright = Strokes.Of("L-7", default, 5, Math.PI / 2).SelectMany(stroke => stroke);

        Assert.All(level.Zip(upright), pair => Assert.True((pair.First.Turned - pair.Second).Length < 1e-12));
    }

    [Fact]
    public void A_space_leaves_room()
    {
        var together = Box("AB", default, 5, 0);
        var apart = Box("A B", default, 5, 0);

        Assert.True(apart.Width > together.Width + 1);
    }

    private static Box2 Box(string text, Point2 center, double height, double angle) =>
        Strokes.Of(text, center, height, angle).SelectMany(stroke => stroke).Aggregate(Box2.Empty, (box, p) => box.Join(p));

    private static string Shape(char letter) =>
        string.Join('|', Strokes.Of(letter.ToString(), default, 6, 0).Select(stroke => string.Join(' ', stroke)));
}
