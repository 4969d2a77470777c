using Vessel.Export;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class StrokesTests
{
    private const string Promised = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,-+/():x#%\u00B0\u00D7\u00B1\u2300";

    /// <summary>All letters that Latin-1 has, and those that Latin Extended-A has of Europe's written languages.</summary>
    private static readonly IEnumerable<char> _accented = Enumerable.Range(0xC0, 0x180 - 0xC0)
        .Select(i => (char)i)
        .Where(char.IsLetter)
        .Except("\u0132\u0133\u0138\u013F\u0140\u0149\u014A\u014B\u0166\u0167\u017F");

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
        // The stroked D is one letter in two languages, and the sign for a diameter a stroked O.
        var shapes = Promised.Concat(_accented).Where(letter => letter is not ('\u0110' or '\u2300')).Distinct().Select(Shape).ToList();

        Assert.Equal(shapes.Count, shapes.Distinct().Count());
    }

    /// <summary>One with a stroke through it reads as the sign of a diameter on a drawing.</summary>
    [Fact]
    public void A_zero_is_one_closed_line_and_narrower_than_the_letter()
    {
        var zero = Assert.Single(Strokes.Of("0", default, 6, 0));

        Assert.Equal(zero[0], zero[^1]);
        Assert.True(Strokes.Width("0", 6) < Strokes.Width("O", 6));
    }

    [Fact]
    public void Every_sign_of_a_keyboard_has_strokes() =>
        Assert.Empty(Strokes.Unknown(string.Concat(Enumerable.Range(' ', '~' - ' ' + 1).Select(i => (char)i))));

    [Fact]
    public void Letters_with_accents_have_strokes() => Assert.Empty(Strokes.Unknown(string.Concat(_accented)));

    [Fact]
    public void A_letter_without_strokes_is_told_of_once() =>
        Assert.Equal(["\u4E00", "\U0001F6A2"], Strokes.Unknown("a\u4E00b\U0001F6A2\u4E00").Select(letter => letter.ToString()));

    [Fact]
    public void A_letter_without_strokes_is_one_box() =>
        Assert.Equal(Shape('\u4E00'), string.Join('|', Strokes.Of("\U0001F6A2", default, 6, 0).Select(stroke => string.Join(' ', stroke))));

    [Fact]
    public void A_line_of_text_is_as_wide_as_it_says()
    {
        var box = Strokes.From("Hm\u00E9 7N", new(5, 6), 4, 0).SelectMany(stroke => stroke).Aggregate(Box2.Empty, (all, p) => all.Join(p));

        Assert.Equal(5, box.Min.U, 1e-12);
        Assert.Equal(5 + Strokes.Width("Hm\u00E9 7N", 4), box.Max.U, 1e-12);
    }

    [Theory]
    [InlineData('\u00C5', 6)]
    [InlineData('\u0150', 6)]
    [InlineData('\u00E9', 4)]
    [InlineData('\u010D', 4)]
    [InlineData('\u00FC', 4)]
    public void An_accent_stands_clear_of_its_letter(char letter, double top)
    {
        var strokes = Strokes.From(letter.ToString(), default, 6, 0);

        Assert.Contains(strokes, stroke => stroke.Max(p => p.V) == top);
        Assert.Contains(strokes, stroke => stroke.Min(p => p.V) > top);
        Assert.All(strokes, stroke => Assert.True(stroke.Max(p => p.V) <= top || stroke.Min(p => p.V) > top));
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
