using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>One letter on the grid of <see cref="StrokeTable"/>, its base line at y = 0.</summary>
/// <param name="Width">Width of its ink; of a space, the room it leaves.</param>
internal sealed record StrokeGlyph(ImmutableArray<ImmutableArray<Point2>> Strokes, double Width)
{
    private const double Space = 2;

    private const double AccentWidth = 2;

    /// <summary>A capital bears its accent so much higher than a small letter.</summary>
    private const double Rise = StrokeTable.CapHeight - 4;

    public static bool Knows(Rune letter) =>
        letter.IsBmp && ((char)letter.Value is var c) && (StrokeTable.Glyphs.ContainsKey(c) || AccentTable.Letters.ContainsKey(c));

    /// <summary>Letters come again and again; the table of those that are known is small.</summary>
    private static readonly ConcurrentDictionary<Rune, StrokeGlyph> _read = new();

    private static readonly StrokeGlyph _missing = Plain(StrokeTable.Missing);

    public static StrokeGlyph Of(Rune letter) => Knows(letter) ? _read.GetOrAdd(letter, Drawn) : _missing;

    private static StrokeGlyph Drawn(Rune letter)
    {
        return AccentTable.Letters.TryGetValue((char)letter.Value, out var parts)
            ? Accented(Plain(StrokeTable.Glyphs[parts.Plain]), char.IsAsciiLetterUpper(parts.Plain), parts.Accent)
            : Plain(StrokeTable.Glyphs[(char)letter.Value]);
    }

    private static StrokeGlyph Plain(string code)
    {
        var strokes = Read(code);
        return new(strokes, strokes.IsEmpty ? Space : Right(strokes));
    }

    private static StrokeGlyph Accented(StrokeGlyph plain, bool capital, Accent accent)
    {
        var middle = (plain.Width - AccentWidth) / 2;
        var by = accent.Place switch
        {
            AccentPlace.Over => new Point2(middle, capital ? Rise : 0),
            AccentPlace.Under => new Point2(middle, 0),
            _ => new Point2(plain.Width + 1, 0),
        };
        ImmutableArray<ImmutableArray<Point2>> all =
            [.. plain.Strokes, .. Read(accent.Code).Select(stroke => ImmutableArray.CreateRange(stroke, p => p + by))];

        // An accent wider than its letter reaches over both sides.
        var left = Math.Min(0, all.Min(stroke => stroke.Min(p => p.U)));
        ImmutableArray<ImmutableArray<Point2>> moved =
            [.. all.Select(stroke => ImmutableArray.CreateRange(stroke, p => p - new Point2(left, 0)))];
        return new(moved, Right(moved));
    }

    private static double Right(ImmutableArray<ImmutableArray<Point2>> strokes) => strokes.Max(stroke => stroke.Max(p => p.U));

    private static ImmutableArray<ImmutableArray<Point2>> Read(string code) =>
    [
        .. code.Split('|', StringSplitOptions.RemoveEmptyEntries).Select(stroke => stroke.Split(' ')
            .Select(p => new Point2(p[0] - '0', p[1] - '0' - StrokeTable.Baseline)).ToImmutableArray()),
    ];
}
