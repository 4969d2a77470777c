using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Pdf;

/// <summary>Items moved, made smaller, and cut off at a rectangle.</summary>
internal static class PdfPlacing
{
    /// <summary>Around the ink's middle line: pens are left out.</summary>
    public static Box2 Bounds(PdfItem item) => item switch
    {
        PdfStroke stroke => Around(stroke.Points),
        PdfFill fill => Around(fill.Outlines.SelectMany(outline => outline)),
        PdfText text => Around(Corners(text)),
        _ => throw new ArgumentException($"no such item: {item}"),
    };

    public static Box2 Bounds(IEnumerable<PdfItem> items) => items.Aggregate(Box2.Empty, (box, item) => box.Join(Bounds(item)));

    /// <summary>Scaled about the origin, then moved; pens stay as they are.</summary>
    public static PdfItem Placed(PdfItem item, double scale, Point2 by)
    {
        Point2 To(Point2 p) => (scale * p) + by;
        return item switch
        {
            PdfStroke stroke => stroke with { Points = [.. stroke.Points.Select(To)] },
            PdfFill fill => fill with { Outlines = [.. fill.Outlines.Select(outline => outline.Select(To).ToImmutableArray())] },
            PdfText text => text with { Start = To(text.Start), Height = scale * text.Height },
            _ => throw new ArgumentException($"no such item: {item}"),
        };
    }

    /// <summary>
    /// What of the item lies within; a text that is cut off becomes strokes, so that none is found on two pages in part.
    /// </summary>
    /// <exception cref="ArgumentException">A fill, which is not cut.</exception>
    public static IEnumerable<PdfItem> Within(PdfItem item, Box2 window)
    {
        var bounds = Bounds(item);
        if (bounds.IsEmpty || !Meets(bounds, window))
            return [];
        if (bounds.Join(window) == window)
            return [item];
        return item switch
        {
            PdfStroke stroke => Cut(stroke, window),
            PdfText text => Strokes.From(text.Words, text.Start, text.Height, text.Angle)
                .SelectMany(letter => Cut(new(letter, text.Pen), window)),
            _ => throw new ArgumentException($"cannot be cut: {item}"),
        };
    }

    private static Box2 Around(IEnumerable<Point2> points) => points.Aggregate(Box2.Empty, (box, p) => box.Join(p));

    private static Point2[] Corners(PdfText text)
    {
        var along = Point2.Polar(text.Width, text.Angle);
        // Letters hang a third of a capital below the line, and accents stand as much above.
        var up = text.Height * Point2.Polar(1, text.Angle).Turned;
        var (low, high) = (text.Start - (1.0 / 3 * up), text.Start + (4.0 / 3 * up));
        return [low, low + along, high, high + along];
    }

    private static bool Meets(Box2 a, Box2 b) =>
        a.Min.U <= b.Max.U && b.Min.U <= a.Max.U && a.Min.V <= b.Max.V && b.Min.V <= a.Max.V;

    private static IEnumerable<PdfItem> Cut(PdfStroke stroke, Box2 window)
    {
        var points = stroke.Closed ? stroke.Points.Add(stroke.Points[0]) : stroke.Points;
        var run = new List<Point2>();
        for (var i = 0; i + 1 < points.Length; i++)
        {
            var (a, b) = (points[i], points[i + 1]);
            if (Share(a, b, window) is not { } share)
                continue;
            if (run.Count > 0 && share.Start > 0)
            {
                yield return new PdfStroke([.. run], stroke.Pen);
                run.Clear();
            }

            if (run.Count == 0)
                run.Add(a + (share.Start * (b - a)));
            run.Add(share.End == 1 ? b : a + (share.End * (b - a)));
            if (share.End == 1)
                continue;
            yield return new PdfStroke([.. run], stroke.Pen);
            run.Clear();
        }

        if (run.Count > 0)
            yield return new PdfStroke([.. run], stroke.Pen);
    }

    /// <summary>Which part of a segment lies within; null for none. Liang and Barsky, ACM TOG 3 (1984).</summary>
    private static Interval? Share(Point2 a, Point2 b, Box2 window)
    {
        var (from, to) = (0.0, 1.0);
        foreach (var (way, room) in new[]
        {
            (a.U - b.U, a.U - window.Min.U), (b.U - a.U, window.Max.U - a.U),
            (a.V - b.V, a.V - window.Min.V), (b.V - a.V, window.Max.V - a.V),
        })
        {
            if (way == 0 && room < 0)
                return null;
            if (way < 0)
                from = Math.Max(from, room / way);
            else if (way > 0)
                to = Math.Min(to, room / way);
        }

        return from <= to && (from < 1 || to == 1) ? new(from, to) : null;
    }
}
