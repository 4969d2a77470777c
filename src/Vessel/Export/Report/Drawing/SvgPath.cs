using System.Collections.Immutable;
using System.Text;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>Outlines as the text of an SVG path.</summary>
internal static class SvgPath
{
    public static string Of(FittedOutline outline, Sheet sheet) => outline.Fit is { } fit
        ? OfChain(fit.Vertices, true, sheet)
        : Circle(sheet.At(outline.Exact.AsCircle!.Center), sheet.Scale * outline.Exact.AsCircle.Radius);

    /// <summary>Centre and radius in page units.</summary>
    public static string Circle(Point2 center, double radius)
    {
        var (left, r, d) = (center - new Point2(radius, 0), Sheet.T(radius), Sheet.T(2 * radius));
        return $"M{Sheet.P(left)}a{r} {r} 0 1 0 {d} 0a{r} {r} 0 1 0 -{d} 0z";
    }

    /// <summary>Equal holes as dots of a line that has no length and round ends: a dozen letters each.</summary>
    public static string Dots(IEnumerable<Point2> centers, Sheet sheet)
    {
        var path = new StringBuilder();
        foreach (var center in centers)
            path.Append('M').Append(Sheet.P(sheet.At(center))).Append("h0");
        return path.ToString();
    }

    public static string Polygon(IEnumerable<Point2> points, Sheet sheet)
    {
        var path = new StringBuilder();
        foreach (var point in points)
            path.Append(path.Length == 0 ? 'M' : 'L').Append(Sheet.P(sheet.At(point)));
        return path.Append('z').ToString();
    }

    /// <summary>A bulge b on a chord c is an arc of radius c (1 + b^2) / 4 |b|; counter-clockwise is SVG's sweep 0, as y runs down.</summary>
    public static string OfChain(ImmutableArray<Bulge> vertices, bool isClosed, Sheet sheet)
    {
        var path = new StringBuilder($"M{Sheet.P(sheet.At(vertices[0].At))}");
        for (var i = 0; i < vertices.Length - (isClosed ? 0 : 1); i++)
        {
            var (from, bulge) = (vertices[i].At, vertices[i].Value);
            var to = vertices[(i + 1) % vertices.Length].At;
            if (bulge == 0)
            {
                path.Append('L');
            }
            else
            {
                var radius = Sheet.T(sheet.Scale * (to - from).Length * (1 + (bulge * bulge)) / (4 * Math.Abs(bulge)));
                path.Append('A').Append(radius).Append(' ').Append(radius)
                    .Append(Math.Abs(bulge) > 1 ? " 0 1 " : " 0 0 ").Append(bulge > 0 ? "0 " : "1 ");
            }

            path.Append(Sheet.P(sheet.At(to)));
        }

        return path.Append(isClosed ? "z" : "").ToString();
    }
}
