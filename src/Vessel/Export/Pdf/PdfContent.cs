using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Pdf;

/// <summary>
/// The operators that draw a page. All coordinates in them are millimetres from the page's lower left corner, so a program that
/// reads them finds true lengths.
/// </summary>
internal sealed class PdfContent
{
    public const double PointsPerMillimetre = 72 / 25.4;

    // 0.1 micrometre.
    private const int Digits = 4;

    private readonly TextBytes _code;

    private (double Width, double Gray, Dash? Dash)? _taken;

    private readonly PdfLetters _letters;

    private PdfContent(PdfLetters letters, Stream to) => (_letters, _code) = (letters, new(to, Digits));

    public static byte[] Of(Page page, PdfLetters letters)
    {
        using var bytes = new MemoryStream();
        var content = new PdfContent(letters, bytes);
        var scale = Numbers.Text(PointsPerMillimetre, 10);
        content._code.Put($"{scale} 0 0 {scale} 0 0 cm\n1 J 1 j\n");
        foreach (var item in page.Items)
            content.Draw(item);
        content._code.Flush();
        return bytes.ToArray();
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
                _code.Put($"{Numbers.Text(gray, 3)} g\n");
                foreach (var outline in area.Outlines)
                    Outline(outline);
                _code.Put("f*\n"u8);
                break;
            case Area area:
                foreach (var outline in area.Outlines)
                    Draw(outline);
                break;
            default:
                Take(item.Pen.Width, item.Pen.Gray, item.Pen.Dash);
                Outline(item);
                _code.Put("S\n"u8);
                break;
        }
    }

    private void Write(Text text)
    {
        Take(text.Thickness, text.Pen.Gray, null);
        foreach (var line in text.Lines)
            Outline(Stroke.Through(line, text.Pen));
        _code.Put("S\n"u8);
        // Mode 3 leaves no ink; the letters of this font have none anyway.
        var right = text.Height / Strokes.UnitsHigh * Point2.Polar(1, text.Angle);
        var (cosine, sine, against) = (Numbers.Text(right.U), Numbers.Text(right.V), Numbers.Text(-right.V));
        _code.Put($"BT 3 Tr /F 1 Tf {cosine} {sine} {against} {cosine} ");
        At(text.Start);
        _code.Put($"Tm <{_letters.Coded(text.Words)}> Tj ET\n");
    }

    private void Take(double width, double gray, Dash? dash)
    {
        if (_taken == (width, gray, dash))
            return;
        _code.Put($"{Numbers.Text(width, 3)} w {Numbers.Text(gray, 3)} G [{dash?.Code}] 0 d\n");
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
        _code.Put("m\n"u8);
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
                _code.Put("l\n"u8);
            }
        }

        if (stroke.Closed)
            _code.Put("h\n"u8);
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
            _code.Put("c\n"u8);
        }
    }

    private void At(Point2 p)
    {
        _code.Put(p.U);
        _code.Put(" "u8);
        _code.Put(p.V);
        _code.Put(" "u8);
    }
}
