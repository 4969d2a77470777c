using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export;

/// <summary>Text as open polylines that a cutter, scriber or plotter can follow without any typeface.</summary>
public static class Strokes
{
    // Lower-case letters are capitals of this share of the height.
    private const double SmallCapital = 0.75;

    // Between letters, and the width of a space, in units of the grid.
    private const double Gap = 2;
    private const double Space = 2;

    /// <summary>One line of text; a letter that is not known becomes an empty box.</summary>
    /// <param name="center">Middle of the line, half-way up a capital, mm.</param>
    /// <param name="height">Of a capital, mm.</param>
    /// <param name="angle">Of the base line, radians from +x.</param>
    public static ImmutableArray<ImmutableArray<Point2>> Of(string text, Point2 center, double height, double angle)
    {
        var scale = height / StrokeTable.CapHeight;
        var right = scale * Point2.Polar(1, angle);
        var start = new Point2(-Width(text) / 2, -StrokeTable.CapHeight / 2.0);
        var polylines = ImmutableArray.CreateBuilder<ImmutableArray<Point2>>();
        foreach (var letter in text)
        {
            var glyph = new Glyph(letter);
            foreach (var stroke in glyph.Strokes())
                polylines.Add([.. stroke.Select(p => start + p).Select(p => center + (p.U * right) + (p.V * right.Turned))]);
            start += new Point2(glyph.Width + Gap, 0);
        }

        return polylines.ToImmutable();
    }

    private static double Width(string text) => text.Sum(letter => new Glyph(letter).Width + Gap) - Gap;

    private readonly struct Glyph
    {
        private readonly string _code;
        private readonly double _scale;

        public Glyph(char letter)
        {
            var capital = letter is >= 'a' and <= 'z' ? (char)(letter - 'a' + 'A') : letter;
            _scale = capital == letter ? 1 : SmallCapital;
            _code = StrokeTable.Glyphs.GetValueOrDefault(capital, StrokeTable.Missing);
        }

        public double Width => _code.Length == 0 ? Space : Strokes().Max(stroke => stroke.Max(p => p.U));

        public IEnumerable<Point2[]> Strokes()
        {
            var scale = _scale;
            return _code.Split('|', StringSplitOptions.RemoveEmptyEntries).Select(stroke => stroke.Split(' ')
                .Select(p => scale * new Point2(p[0] - '0', p[1] - '0' - StrokeTable.Baseline)).ToArray());
        }
    }
}
