using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Pdf;

/// <summary>Something on a page. A closed set: <see cref="PdfStroke"/>, <see cref="PdfFill"/>, <see cref="PdfText"/>.</summary>
public abstract record PdfItem;

/// <summary>A line through points, mm from the page's lower left corner; joins and ends are round.</summary>
public sealed record PdfStroke(ImmutableArray<Point2> Points, Pen Pen, bool Closed = false) : PdfItem
{
    public static PdfStroke Line(Point2 a, Point2 b, Pen pen) => new([a, b], pen);

    public static PdfStroke Rectangle(Box2 box, Pen pen) =>
        new([box.Min, new(box.Max.U, box.Min.V), box.Max, new(box.Min.U, box.Max.V)], pen, Closed: true);
}

/// <summary>Areas between closed outlines; where two overlap there is a hole (even-odd).</summary>
/// <param name="Gray">0 is black, 1 is white.</param>
public sealed record PdfFill(ImmutableArray<ImmutableArray<Point2>> Outlines, double Gray) : PdfItem;

/// <summary>
/// A line of text, drawn in the strokes of <see cref="Strokes"/>; beneath them it also stands as text that can be found, copied and read aloud.
/// </summary>
/// <param name="Start">Left end of the base line, mm.</param>
/// <param name="Height">Of a capital, mm.</param>
/// <param name="Angle">Of the base line, radians from +x.</param>
public sealed record PdfText(string Words, Point2 Start, double Height, Pen Pen, double Angle = 0) : PdfItem
{
    /// <summary>Pen for letters of that height: a ninth of it is as bold as is easily read (ISO 3098 knows a tenth and a fourteenth).</summary>
    public static Pen PenOf(double height) => new(Math.Max(0.12, height / 9));

    public static PdfText Left(string words, Point2 start, double height) => new(words, start, height, PenOf(height));

    public static PdfText Right(string words, Point2 end, double height) =>
        new(words, end - new Point2(Strokes.Width(words, height), 0), height, PenOf(height));

    /// <summary>Round the middle of the line, half-way up a capital.</summary>
    public static PdfText Middle(string words, Point2 middle, double height, double angle = 0)
    {
        var right = Point2.Polar(1, angle);
        var start = middle - (Strokes.Width(words, height) / 2 * right) - (height / 2 * right.Turned);
        return new(words, start, height, PenOf(height), angle);
    }

    public double Width => Strokes.Width(Words, Height);
}

/// <summary>How a line is drawn.</summary>
/// <param name="Width">mm.</param>
/// <param name="Gray">0 is black, 1 is white.</param>
/// <param name="Dash">Ink and gap by turns, mm; null for a whole line.</param>
public sealed record Pen(double Width, double Gray = 0, Dash? Dash = null);

/// <summary>Ink and gap by turns, mm: one pair, or two where long and short dashes alternate.</summary>
public sealed record Dash(double Ink, double Gap, double ShortInk = 0)
{
    internal string Code => ShortInk == 0
        ? $"{Numbers.Text(Ink, 3)} {Numbers.Text(Gap, 3)}"
        : $"{Numbers.Text(Ink, 3)} {Numbers.Text(Gap, 3)} {Numbers.Text(ShortInk, 3)} {Numbers.Text(Gap, 3)}";
}
