using System.Text;
using Vessel.Export.Drawing;
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

    private (double Width, double Gray, Dash? Dash)? _taken;

    public static byte[] Of(Page page, PdfLetters letters)
    {
        var content = new PdfContent(letters);
        content._code.Append(Numbers.Text(PointsPerMillimetre, 10)).Append(" 0 0 ")
            .Append(Numbers.Text(PointsPerMillimetre, 10)).Append(" 0 0 cm\n1 J 1 j\n");
        foreach (var item in page.Items)
            content.Draw(item);
        return Encoding.ASCII.GetBytes(content._code.ToString());
    }

    private void Draw(Item item)
    {
        switch (item)
        {
            case Text text:
                Write(text);
                break;
            case Pattern pattern:
                foreach (var part in pattern.Items)
                    Draw(part);
                break;
            case Area { Pen.Fill: { } gray } area:
                _code.Append(Numbers.Text(gray, 3)).Append(" g\n");
                foreach (var outline in area.Outlines)
                    Outline(outline);
                _code.Append("f*\n");
                break;
            case Area area:
                foreach (var outline in area.Outlines)
                    Draw(outline);
                break;
            default:
                Take(item.Pen.Width, item.Pen.Gray, item.Pen.Dash);
                Outline(item);
                _code.Append("S\n");
                break;
        }
    }

    private void Write(Text text)
    {
        Take(text.Thickness, text.Pen.Gray, null);
        foreach (var line in text.Lines)
            Outline(Stroke.Through(line, text.Pen));
        _code.Append("S\n");
        // Mode 3 leaves no ink; the letters of this font have none anyway.
        var right = text.Height / Strokes.UnitsHigh * Point2.Polar(1, text.Angle);
        _code.Append("BT 3 Tr /F 1 Tf ");
        foreach (var number in new[] { right.U, right.V, -right.V, right.U })
            _code.Append(Numbers.Text(number)).Append(' ');
        At(text.Start);
        _code.Append("Tm <").Append(letters.Coded(text.Words)).Append("> Tj ET\n");
    }

    private void Take(double width, double gray, Dash? dash)
    {
        if (_taken == (width, gray, dash))
            return;
        _code.Append(Numbers.Text(width, 3)).Append(" w ").Append(Numbers.Text(gray, 3)).Append(" G ")
            .Append('[').Append(dash?.Code).Append("] 0 d\n");
        _taken = (width, gray, dash);
    }

    private void Outline(Item item)
    {
        var stroke = item switch
        {
            Stroke own => own,
            Circle circle => circle.AsStroke,
            _ => throw new ArgumentException($"no outline: {item}"),
        };
        At(stroke.Vertices[0].At);
        _code.Append("m\n");
        foreach (var (i, vertex) in stroke.Vertices.Index())
        {
            var next = i + 1 < stroke.Vertices.Length ? stroke.Vertices[i + 1].At : stroke.Vertices[0].At;
            if (vertex.Value != 0 && (stroke.Closed || i + 1 < stroke.Vertices.Length))
            {
                Curves((Arc2)vertex.To(next));
            }
            else if (i + 1 < stroke.Vertices.Length)
            {
                At(next);
                _code.Append("l\n");
            }
        }

        if (stroke.Closed)
            _code.Append("h\n");
    }

    /// <summary>
    /// Cubic pieces of at most an eighth of a turn, whose handles are 4/3 tan(a / 4) radii long for an angle a: they leave the arc by
    /// 2/27 sin^6(a / 4) / cos^2(a / 4) of its radius at most, which is 4.2e-6.
    /// </summary>
    private void Curves(Arc2 arc)
    {
        var pieces = Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 4));
        var step = arc.Sweep / pieces;
        var handle = 4.0 / 3 * Math.Tan(step / 4) * arc.Radius;
        for (var i = 0; i < pieces; i++)
        {
            var (from, to) = (Point2.Polar(1, arc.From + (i * step)), Point2.Polar(1, arc.From + ((i + 1) * step)));
            At(arc.Center + (arc.Radius * from) + (handle * from.Turned));
            At(arc.Center + (arc.Radius * to) - (handle * to.Turned));
            At(arc.Center + (arc.Radius * to));
            _code.Append("c\n");
        }
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
