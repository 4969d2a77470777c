using System.Text;
using Vessel.Geometry;

namespace Vessel.Export.Pdf;

/// <summary>
/// The operators that draw a page. All coordinates in them are millimetres from the page's lower left corner, so a program that
/// reads them finds true lengths.
/// </summary>
internal sealed class PdfContent(PdfLetters letters)
{
    public const double PointsPerMillimetre = 72 / 25.4;

    // 0.1 micrometre.
    private const int Digits = 4;

    private readonly StringBuilder _code = new();

    private Pen? _pen;

    public static byte[] Of(PdfPage page, PdfLetters letters)
    {
        var content = new PdfContent(letters);
        content._code.Append(Numbers.Text(PointsPerMillimetre, 10)).Append(" 0 0 ")
            .Append(Numbers.Text(PointsPerMillimetre, 10)).Append(" 0 0 cm\n1 J 1 j\n");
        foreach (var item in page.Items)
            content.Draw(item);
        return Encoding.ASCII.GetBytes(content._code.ToString());
    }

    private void Draw(PdfItem item)
    {
        switch (item)
        {
            case PdfStroke stroke:
                Take(stroke.Pen);
                Outline(stroke.Points, stroke.Closed);
                _code.Append("S\n");
                break;
            case PdfFill fill:
                _code.Append(Numbers.Text(fill.Gray, 3)).Append(" g\n");
                foreach (var outline in fill.Outlines)
                    Outline(outline, closed: true);
                _code.Append("f*\n");
                break;
            case PdfText text:
                Write(text);
                break;
            default:
                throw new ArgumentException($"no such item: {item}");
        }
    }

    private void Write(PdfText text)
    {
        Take(text.Pen);
        foreach (var stroke in Strokes.From(text.Words, text.Start, text.Height, text.Angle))
            Outline(stroke, closed: false);
        _code.Append("S\n");

        // Mode 3 leaves no ink; the letters of this font have none anyway.
        var right = text.Height / Strokes.UnitsHigh * Point2.Polar(1, text.Angle);
        _code.Append("BT 3 Tr /F 1 Tf ");
        foreach (var number in new[] { right.U, right.V, -right.V, right.U })
            _code.Append(Numbers.Text(number)).Append(' ');
        At(text.Start);
        _code.Append("Tm <").Append(letters.Coded(text.Words)).Append("> Tj ET\n");
    }

    private void Take(Pen pen)
    {
        if (pen == _pen)
            return;
        _code.Append(Numbers.Text(pen.Width, 3)).Append(" w ").Append(Numbers.Text(pen.Gray, 3)).Append(" G ")
            .Append('[').Append(pen.Dash?.Code).Append("] 0 d\n");
        _pen = pen;
    }

    private void Outline(IReadOnlyList<Point2> points, bool closed)
    {
        for (var i = 0; i < points.Count; i++)
        {
            At(points[i]);
            _code.Append(i == 0 ? "m\n" : "l\n");
        }

        if (closed)
            _code.Append("h\n");
    }

    private void At(Point2 p)
    {
        Put(p.U);
        _code.Append(' ');
        Put(p.V);
        _code.Append(' ');
    }

    /// <summary>
    /// To <see cref="Digits"/>, shortest. By whole numbers: a page has ten thousands of coordinates, and they are most of its cost.
    /// </summary>
    private void Put(double value)
    {
        const int unit = 10_000;
        if (!(Math.Abs(value) < 1e9))
        {
            _code.Append(Numbers.Text(value, Digits));
            return;
        }

        var whole = (long)Math.Round(Math.Abs(value) * unit);
        if (value < 0 && whole > 0)
            _code.Append('-');
        _code.Append(whole / unit);
        var rest = (int)(whole % unit);
        if (rest == 0)
            return;
        _code.Append('.');
        for (var digit = unit / 10; rest > 0; digit /= 10)
        {
            _code.Append((char)('0' + (rest / digit)));
            rest %= digit;
        }
    }
}
