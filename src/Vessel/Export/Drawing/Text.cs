using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Drawing;

/// <summary>Which place of its base line a text is set by.</summary>
public enum Anchor
{
    /// <summary>The left end.</summary>
    Start,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The right end.</summary>
    End,
}

/// <summary>
/// A line of text. Paper and cutter take it in the strokes of <see cref="Strokes"/>, of which its width is; a page in a browser and the
/// notes of a DXF take it in a typeface of the reader's.
/// </summary>
/// <param name="At">Place on the base line, mm.</param>
/// <param name="Height">Height of a capital, mm.</param>
/// <param name="Angle">Direction of the base line, radians from +x.</param>
public sealed record Text(string Words, Point2 At, double Height, Pen Pen, Anchor Anchor = Anchor.Start, double Angle = 0) : Item(Pen)
{
    /// <summary>Text whose left end is at a place.</summary>
    public static Text Left(string words, Point2 start, double height) => new(words, start, height, Pens.Note);

    /// <summary>Text whose right end is at a place.</summary>
    public static Text Right(string words, Point2 end, double height) => new(words, end, height, Pens.Note, Anchor.End);

    /// <summary>Round the middle of the line, half-way up a capital.</summary>
    public static Text Middle(string words, Point2 middle, double height, double angle = 0) =>
        Round(words, middle, height, angle, Pens.Note);

    /// <summary>Text round the middle of the line, half-way up a capital, with a pen of its own.</summary>
    public static Text Round(string words, Point2 middle, double height, double angle, Pen pen) =>
        new(words, middle - (height / 2 * Point2.Polar(1, angle).Turned), height, pen, Anchor.Middle, angle);

    /// <summary>Becomes smaller where there is little room for it, mm.</summary>
    public static Text Fitted(string words, Point2 start, double height, double room) =>
        Left(words, start, Math.Min(height, height * room / Math.Max(room, Strokes.Width(words, height))));

    /// <summary>Width from the first letter's left to the last one's right, mm.</summary>
    public double Width => Strokes.Width(Words, Height);

    /// <summary>Left end of the base line.</summary>
    public Point2 Start => At - ((int)Anchor / 2.0 * Width * Point2.Polar(1, Angle));

    /// <summary>
    /// Thickness of its strokes, mm: a ninth of its height is as bold as is easily read (ISO 3098 knows a tenth and a fourteenth).
    /// </summary>
    public double Thickness => Math.Max(0.12, Height / 9);

    /// <summary>Letters of the text as open lines.</summary>
    public ImmutableArray<ImmutableArray<Point2>> Lines => Strokes.From(Words, Start, Height, Angle);
}
