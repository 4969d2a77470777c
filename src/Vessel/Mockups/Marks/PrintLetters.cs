using System.Collections.Frozen;
using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Mockups;

/// <summary>
/// Capital letters of our own for a print, of bars that stand apart like those of a stencil: none touches another and none goes round
/// a hole, so that each is one plain field of the surface.
/// </summary>
/// <remarks>
/// A stroke is two points of two characters each, x from 0 and y from 0, the base line, to 12 (after 9 come : ; and the less-than
/// sign). Earlier strokes of a letter stand whole, later ones give way to them.
/// </remarks>
internal static class PrintLetters
{
    private const int CapHeight = 12;

    private const double Space = 4;

    /// <summary>An arrow up and one down, for what stands beyond an end of the shell.</summary>
    public const char Up = '\u2191';

    public const char Down = '\u2193';

    private static readonly FrozenDictionary<char, string> _strokes = new Dictionary<char, string>
    {
        ['A'] = "00 4<|80 4<|24 64",
        ['B'] = "00 0<|87 8;|81 84|0< 6<|06 66|00 60",
        ['C'] = "00 0<|0< 8<|00 80",
        ['D'] = "00 0<|82 8:|0< 6<|00 60",
        ['E'] = "00 0<|0< 8<|06 66|00 80",
        ['F'] = "00 0<|0< 8<|06 66",
        ['G'] = "00 0<|0< 8<|46 86|80 86|00 80",
        ['H'] = "00 0<|80 8<|06 86",
        ['I'] = "00 0<",
        ['J'] = "80 8<|00 04|00 80",
        ['K'] = "00 0<|16 8<|46 80",
        ['L'] = "00 0<|00 80",
        ['M'] = "00 0<|:0 :<|0< :<|53 59",
        ['N'] = "00 0<|;0 ;<|0< ;0",
        ['O'] = "00 0<|80 8<|0< 8<|00 80",
        ['P'] = "00 0<|86 8<|0< 8<|06 86",
        ['Q'] = "00 0<|85 8<|0< 8<|35 90|00 40",
        ['R'] = "00 0<|87 8<|0< 8<|06 86|36 80",
        ['S'] = "06 86|06 0<|80 86|0< 8<|00 80",
        ['T'] = "0< 8<|40 4<",
        ['U'] = "00 0<|80 8<|00 80",
        ['V'] = "0< 40|8< 40",
        ['W'] = "00 0<|:0 :<|00 :0|53 5<",
        ['X'] = "00 8<|0< 46|46 80",
        ['Y'] = "46 40|46 8<|46 0<",
        ['Z'] = "0< 8<|00 80|00 8<",
        ['0'] = "00 0<|80 8<|0< 8<|00 80|44 48",
        ['1'] = "40 4<|09 4<",
        ['2'] = "06 86|86 8<|00 06|0< 8<|00 80",
        ['3'] = "80 8<|0< 8<|26 86|00 80",
        ['4'] = "80 8<|06 0<|06 86",
        ['5'] = "06 86|06 0<|80 86|0< 8<|00 80",
        ['6'] = "00 0<|0< 8<|06 86|80 86|00 80",
        ['7'] = "0< 8<|10 8<",
        ['8'] = "00 0<|80 8<|0< 8<|06 86|00 80",
        ['9'] = "80 8<|0< 8<|06 86|06 0<|00 80",
        ['-'] = "06 66",
        ['+'] = "06 86|46 4:|42 46",
        ['.'] = "00 00",
        [','] = "00 00",
        [':'] = "03 03|09 09",
        ['_'] = "00 80",
        ['/'] = "00 8<",
        [Up] = "40 4<|4< 07|4< 87",
        [Down] = "40 4<|40 05|40 85",
    }.ToFrozenDictionary();

    /// <summary>Letters that have bars; all others leave a space.</summary>
    public static IEnumerable<char> Known => _strokes.Keys;

    /// <summary>Whether anything of the text comes out.</summary>
    public static bool Shows(string text) => text.Any(letter => _strokes.ContainsKey(Capital(letter)));

    /// <summary>The bars of one line, with the left end of its base line in the origin.</summary>
    public static ImmutableArray<LetterBar> Bars(string text, LetterSize size)
    {
        var bars = ImmutableArray.CreateBuilder<LetterBar>();
        var along = 0.0;
        foreach (var letter in text)
        {
            var right = new Point2(along + (size.Bar / 2), size.Bar / 2);
            bars.AddRange(Letter(Capital(letter), size).Select(bar => bar with { A = bar.A + right, B = bar.B + right }));
            along += Wide(Capital(letter), size) + size.Apart;
        }

        return bars.ToImmutable();
    }

    /// <summary>Width from the first letter's left to the last one's right, mm.</summary>
    public static double Width(string text, LetterSize size) => text.Sum(letter => Wide(Capital(letter), size) + size.Apart) - size.Apart;

    private static List<LetterBar> Letter(char letter, LetterSize size)
    {
        var bars = new List<LetterBar>();
        foreach (var (from, to) in Strokes(letter))
        {
            if (LetterBar.Between(Unit(size) * from, Unit(size) * to, size.Bar, size.Gap, bars) is { } bar)
                bars.Add(bar);
        }

        return bars;
    }

    private static double Wide(char letter, LetterSize size)
    {
        var strokes = Strokes(letter).ToList();
        return strokes.Count == 0 ? Space * Unit(size)
            : (strokes.Max(stroke => Math.Max(stroke.From.U, stroke.To.U)) * Unit(size)) + size.Bar;
    }

    private static double Unit(LetterSize size) => (size.Height - size.Bar) / CapHeight;

    private static IEnumerable<(Point2 From, Point2 To)> Strokes(char letter) =>
        _strokes.TryGetValue(letter, out var code)
            ? code.Split('|').Select(stroke => (At(stroke, 0), At(stroke, 3)))
            : [];

    private static Point2 At(string stroke, int i) => new(stroke[i] - '0', stroke[i + 1] - '0');

    private static char Capital(char letter) =>
        char.ToUpperInvariant(AccentTable.Letters.TryGetValue(letter, out var parts) ? parts.Plain : letter);
}

/// <summary>How letters are printed, mm of the vessel.</summary>
/// <param name="Height">Height of a capital.</param>
/// <param name="Bar">Width of a stroke.</param>
/// <param name="Gap">Least distance of two strokes of a letter.</param>
/// <param name="Apart">Distance of two letters.</param>
internal readonly record struct LetterSize(double Height, double Bar, double Gap, double Apart)
{
    /// <summary>What a nozzle of 0.4 mm lays as two lines, and leaves open, mm of the print: common practice, no source.</summary>
    public const double LeastBar = 0.8;

    public const double LeastGap = 0.4;

    /// <summary>Below it strokes of the least width run together, mm of the print.</summary>
    public const double LeastHeight = 5;

    /// <param name="height">mm of the print.</param>
    /// <param name="scale">Scale of the print to the vessel.</param>
    public static LetterSize Of(double height, double scale) => new(
        height / scale, Math.Max(LeastBar, 0.13 * height) / scale, Math.Max(LeastGap, 0.07 * height) / scale, 0.22 * height / scale);
}
