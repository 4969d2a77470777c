using System.Collections.Immutable;
using System.Text;
using Vessel.Geometry;

namespace Vessel.Export;

/// <summary>Text as open polylines that a cutter, scriber or plotter can follow without any typeface.</summary>
public static class Strokes
{
    // Between letters, in units of the grid.
    private const double Gap = 2;

    /// <summary>One line of text; a letter that is not known becomes an empty box.</summary>
    /// <param name="center">Middle of the line, half-way up a capital, mm.</param>
    /// <param name="height">Height of a capital, mm.</param>
    /// <param name="angle">Direction of the base line, radians from +x.</param>
    public static ImmutableArray<ImmutableArray<Point2>> Of(string text, Point2 center, double height, double angle)
    {
        var right = Point2.Polar(1, angle);
        return From(text, center - (Width(text, height) / 2 * right) - (height / 2 * right.Turned), height, angle);
    }

    /// <summary>One line of text from the left end of its base line; a letter that is not known becomes an empty box.</summary>
    public static ImmutableArray<ImmutableArray<Point2>> From(string text, Point2 start, double height, double angle)
    {
        var scale = height / StrokeTable.CapHeight;
        var right = scale * Point2.Polar(1, angle);
        var along = 0.0;
        var polylines = ImmutableArray.CreateBuilder<ImmutableArray<Point2>>();
        foreach (var letter in text.EnumerateRunes())
        {
            var glyph = StrokeGlyph.Of(letter);
            foreach (var stroke in glyph.Strokes)
                polylines.Add([.. stroke.Select(p => start + ((along + p.U) * right) + (p.V * right.Turned))]);
            along += glyph.Width + Gap;
        }

        return polylines.ToImmutable();
    }

    /// <summary>Width from the first letter's left to the last one's right, mm.</summary>
    public static double Width(string text, double height) =>
        Math.Max(0, text.EnumerateRunes().Sum(Advance) - Gap) * height / StrokeTable.CapHeight;

    /// <summary>Distance from one letter to the next, in units of which a capital is <see cref="UnitsHigh"/> high.</summary>
    public static double Advance(Rune letter) => StrokeGlyph.Of(letter).Width + Gap;

    public static int UnitsHigh => StrokeTable.CapHeight;

    /// <summary>Letters that are drawn as a box, in the order in which they come; each once.</summary>
    public static ImmutableArray<Rune> Unknown(string text) =>
        [.. text.EnumerateRunes().Where(letter => !StrokeGlyph.Knows(letter)).Distinct()];
}
