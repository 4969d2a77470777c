using System.Text;
using Vessel.Export.Drawing;

namespace Vessel.Export.Svg;

/// <summary>A page as SVG at its true size, millimetres from the upper left; each text is one named group of strokes.</summary>
internal static class SvgFile
{
    private const int Digits = 3;

    public static void Write(string title, Page page, Stream to)
    {
        using var svg = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        var (width, height) = (Numbers.Text(page.Width, Digits), Numbers.Text(page.Height, Digits));
        svg.WriteLine(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" "
            + "fill=\"none\" stroke=\"black\" stroke-linecap=\"round\" stroke-linejoin=\"round\">");
        svg.WriteLine($"<title>{XmlEscape.Of(title)}</title>");
        svg.WriteLine("<rect width=\"100%\" height=\"100%\" fill=\"white\" stroke=\"none\"/>");
        foreach (var item in page.Items)
            svg.WriteLine(Of(item, new(page.Height, Digits)));
        svg.WriteLine("</svg>");
    }

    private static string Of(Item item, SvgPath path) => item switch
    {
        Text text => $"<path role=\"img\" aria-label=\"{XmlEscape.Of(text.Words)}\" "
            + $"{Drawn(text.Pen with { Width = text.Thickness, Dash = null })}"
            + $"d=\"{string.Concat(text.Lines.Select(line => path.Of(Stroke.Through(line, text.Pen))))}\"/>",
        Area { Pen.Fill: { } gray } => $"<path fill=\"{Grey(gray)}\" fill-rule=\"evenodd\" stroke=\"none\" d=\"{path.Of(item)}\"/>",
        Pattern pattern => string.Join('\n', pattern.Items.Select(part => Of(part, path))),
        _ => $"<path {Drawn(item.Pen)}d=\"{path.Of(item)}\"/>",
    };

    private static string Drawn(Pen pen) => $"stroke-width=\"{Numbers.Text(pen.Width, Digits)}\" "
        + (pen.Gray > 0 ? $"stroke=\"{Grey(pen.Gray)}\" " : string.Empty)
        + (pen.Dash is { } dash ? $"stroke-dasharray=\"{dash.Code}\" " : string.Empty);

    private static string Grey(double gray)
    {
        var level = (int)Math.Round(255 * gray);
        return $"#{level:X2}{level:X2}{level:X2}";
    }
}
