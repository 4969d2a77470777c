using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class PrintLettersTests
{
    public static TheoryData<char> Known => [.. PrintLetters.Known];

    [Theory]
    [MemberData(nameof(Known))]
    public void Each_letter_is_of_bars_that_a_printer_lays_with_gaps_that_it_leaves(char letter)
    {
        foreach (var (height, scale) in ((double, double)[])[(5, 1), (7, 1), (20, 0.25)])
        {
            var size = LetterSize.Of(height, scale);
            var bars = PrintLetters.Bars(letter.ToString(), size);

            Assert.NotEmpty(bars);
            Assert.True(size.Bar * scale >= 0.8 && size.Gap * scale >= 0.4);
            Assert.All(bars, bar => Assert.True(bar.Length >= size.Bar - 1e-9, $"{letter} has a bar of {bar.Length} mm"));
            for (var i = 0; i < bars.Length; i++)
            {
                for (var k = 0; k < i; k++)
                    Assert.True(Distance(bars[i], bars[k]) >= size.Gap - 1e-9, $"{letter}: bars {k} and {i} come close");
            }

            var corners = bars.SelectMany(bar => bar.Corners).ToList();
            Assert.All(corners, at => Assert.InRange(at.V, -0.1 * size.Height, 1.1 * size.Height));
            Assert.All(corners, at =>
                Assert.InRange(at.U, -0.1 * size.Height, PrintLetters.Width(letter.ToString(), size) + (0.1 * size.Height)));
        }
    }

    [Fact]
    public void No_two_letters_look_alike_but_five_and_S()
    {
        var size = LetterSize.Of(7, 1);
        var shapes = PrintLetters.Known.Where(letter => letter is not ('S' or ',')).GroupBy(letter => string.Join(
            '|', PrintLetters.Bars(letter.ToString(), size).SelectMany(bar => bar.Corners).Select(p => $"{p.U:0.0} {p.V:0.0}").Order()));

        Assert.All(shapes, shape => Assert.Single(shape));
    }

    [Fact]
    public void A_letter_with_an_accent_is_printed_without_it()
    {
        var size = LetterSize.Of(7, 1);

        Assert.True(AccentTable.Letters.ContainsKey('ü'));
        Assert.Equal(PrintLetters.Bars("UBER", size), PrintLetters.Bars("über", size));
        Assert.False(PrintLetters.Shows("漢字 "));
    }

    /// <summary>Of two rectangles, by their sides.</summary>
    private static double Distance(LetterBar a, LetterBar b)
    {
        var (p, q) = (a.Corners.Select(Raised).ToList(), b.Corners.Select(Raised).ToList());
        return Enumerable.Range(0, 4)
            .Min(i => Enumerable.Range(0, 4).Min(k => Segments.Distance(p[i], p[(i + 1) % 4], q[k], q[(k + 1) % 4])));
    }

    private static Vector3 Raised(Point2 p) => new(p.U, p.V, 0);
}
