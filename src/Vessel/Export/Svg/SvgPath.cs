using System.Text;
using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Svg;

/// <summary>
/// Outlines as the text of an SVG path (W3C, "Scalable Vector Graphics 2", section 9.3), whose y runs down; arcs stay arcs.
/// </summary>
/// <param name="Top">Height that becomes y = 0, mm.</param>
/// <param name="Digits">Behind the point.</param>
internal readonly record struct SvgPath(double Top, int Digits)
{
    /// <exception cref="ArgumentException">A text, which is no outline.</exception>
    public string Of(Item item) => item switch
    {
        Stroke stroke => Chain(stroke),
        Circle circle => Whole(circle),
        Area area => string.Concat(area.Outlines.Select(Of)),
        Pattern { Motif: [Circle] } pattern => Dots(pattern.Places),
        Pattern pattern => string.Concat(pattern.Items.Select(Of)),
        _ => throw new ArgumentException($"no outline: {item}"),
    };

    public string P(Point2 p) => $"{T(p.U)} {T(Top - p.V)}";

    public string T(double value) => Numbers.Text(value, Digits);

    /// <summary>
    /// A bulge b on a chord c is an arc of radius c (1 + b^2) / 4 |b|; counter-clockwise is SVG's sweep 0, as y runs down.
    /// </summary>
    private string Chain(Stroke stroke)
    {
        var vertices = stroke.Vertices;
        var path = new StringBuilder($"M{P(vertices[0].At)}");
        for (var i = 0; i < vertices.Length; i++)
        {
            var (from, bulge) = (vertices[i].At, vertices[i].Value);
            // Z draws the last line of a closed stroke, and an open one has none.
            if (i + 1 == vertices.Length && (bulge == 0 || !stroke.Closed))
                break;
            var to = vertices[(i + 1) % vertices.Length].At;
            if (bulge == 0)
            {
                path.Append('L');
            }
            else
            {
                var radius = T((to - from).Length * (1 + (bulge * bulge)) / (4 * Math.Abs(bulge)));
                path.Append('A').Append(radius).Append(' ').Append(radius)
                    .Append(Math.Abs(bulge) > 1 ? " 0 1 " : " 0 0 ").Append(bulge > 0 ? "0 " : "1 ");
            }

            path.Append(P(to));
        }

        return path.Append(stroke.Closed ? "Z" : "").ToString();
    }

    private string Whole(Circle circle)
    {
        var (r, d) = (T(circle.Radius), T(2 * circle.Radius));
        return $"M{P(circle.Center - new Point2(circle.Radius, 0))}a{r} {r} 0 1 0 {d} 0a{r} {r} 0 1 0 -{d} 0Z";
    }

    /// <summary>Equal holes as dots of a line that has no length and round ends, as wide as the holes: a dozen letters each.</summary>
    private string Dots(IEnumerable<Point2> centers)
    {
        var path = new StringBuilder();
        foreach (var center in centers)
            path.Append('M').Append(P(center)).Append("h0");
        return path.ToString();
    }
}
