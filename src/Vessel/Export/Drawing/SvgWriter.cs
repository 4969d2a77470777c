using System.Text;
using Vessel.Export.Pdf;
using Vessel.Geometry;

namespace Vessel.Export.Drawing;

/// <summary>A page as SVG at its true size, millimetres from the upper left; each text is one named group of strokes.</summary>
internal static class SvgWriter
{
    private const int Digits = 3;

    public static void Write(string title, PdfPage page, Stream to)
    {
        using var svg = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        var (width, height) = (Numbers.Text(page.Width, Digits), Numbers.Text(page.Height, Digits));
        svg.WriteLine(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" "
            + "fill=\"none\" stroke=\"black\" stroke-linecap=\"round\" stroke-linejoin=\"round\">");
        svg.WriteLine($"<title>{XmlEscape.Of(title)}</title>");
        svg.WriteLine("<rect width=\"100%\" height=\"100%\" fill=\"white\" stroke=\"none\"/>");
        foreach (var item in page.Items)
            svg.WriteLine(Of(item, page.Height));
        svg.WriteLine("</svg>");
    }

    private static string Of(PdfItem item, double height) => item switch
    {
        PdfStroke stroke => $"<path {Drawn(stroke.Pen)}d=\"{Path(stroke.Points, height, stroke.Closed)}\"/>",
        PdfFill fill => $"<path fill=\"{Grey(fill.Gray)}\" fill-rule=\"evenodd\" stroke=\"none\" "
            + $"d=\"{string.Concat(fill.Outlines.Select(outline => Path(outline, height, closed: true)))}\"/>",
        PdfText text => $"<path role=\"img\" aria-label=\"{XmlEscape.Of(text.Words)}\" {Drawn(text.Pen)}"
            + $"d=\"{string.Concat(Strokes.From(text.Words, text.Start, text.Height, text.Angle).Select(line => Path(line, height, closed: false)))}\"/>",
        _ => throw new ArgumentException($"no such item: {item}"),
    };

    private static string Drawn(Pen pen) => $"stroke-width=\"{Numbers.Text(pen.Width, Digits)}\" "
        + (pen.Gray > 0 ? $"stroke=\"{Grey(pen.Gray)}\" " : string.Empty)
        + (pen.Dash is { } dash ? $"stroke-dasharray=\"{dash.Code}\" " : string.Empty);

    private static string Grey(double gray)
    {
        var level = (int)Math.Round(255 * gray);
        return $"#{level:X2}{level:X2}{level:X2}";
    }

    private static string Path(IReadOnlyList<Point2> points, double height, bool closed)
    {
        var path = new StringBuilder();
        for (var i = 0; i < points.Count; i++)
            path.Append(i == 0 ? 'M' : 'L').Append(Numbers.Text(points[i].U, Digits)).Append(' ').Append(Numbers.Text(height - points[i].V, Digits));
        return path.Append(closed ? "Z" : string.Empty).ToString();
    }
}
