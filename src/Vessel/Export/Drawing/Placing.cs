using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Drawing;

/// <summary>Items measured, moved, made smaller, stretched, and cut off at a rectangle.</summary>
internal static class Placing
{
    /// <summary>Deviation of the chords that stand for an arc where it cannot stay one, mm: finer than any printer's dot.</summary>
    public const double Chord = 0.01;

    /// <summary>Around the ink's middle line: pens are left out.</summary>
    public static Box2 Bounds(Item item) => item switch
    {
        Stroke stroke => stroke.Edges.Aggregate(Box2.Empty, (box, edge) => box.Join(CurveMeasures.Bounds(edge))),
        Circle { Center: var at, Radius: var radius } => new(at - new Point2(radius, radius), at + new Point2(radius, radius)),
        Area area => Bounds(area.Outlines),
        Text text => Around(Corners(text)),
        Pattern pattern when Bounds(pattern.Motif) is var motif =>
            pattern.Places.Aggregate(Box2.Empty, (box, at) => box.Join(motif.Min + at).Join(motif.Max + at)),
        _ => throw new ArgumentException($"no such item: {item}"),
    };

    /// <summary>Around all of them; empty for none.</summary>
    public static Box2 Bounds(IEnumerable<Item> items) => items.Aggregate(Box2.Empty, (box, item) => box.Join(Bounds(item)));

    /// <summary>Scaled about the origin, then moved; pens stay as they are.</summary>
    public static Item Placed(Item item, double scale, Point2 by) => Placed(item, p => (scale * p) + by, scale);

    /// <summary>Moved by a map that keeps shapes.</summary>
    /// <param name="scale">Factor by which the map makes lengths larger.</param>
    /// <param name="turn">Angle by which it turns, radians.</param>
    public static Item Placed(Item item, Func<Point2, Point2> to, double scale = 1, double turn = 0) => item switch
    {
        Stroke stroke => stroke with { Vertices = [.. stroke.Vertices.Select(vertex => vertex with { At = to(vertex.At) })] },
        Circle circle => circle with { Center = to(circle.Center), Radius = scale * circle.Radius },
        Area area => area with { Outlines = [.. area.Outlines.Select(outline => Placed(outline, to, scale, turn))] },
        Text text => text with { At = to(text.At), Height = scale * text.Height, Angle = text.Angle + turn },
        Pattern pattern when to(default) is var origin => pattern with
        {
            Motif = [.. pattern.Motif.Select(motif => Placed(motif, p => to(p) - origin, scale, turn))],
            Places = pattern.Places.Select(to),
        },
        _ => throw new ArgumentException($"no such item: {item}"),
    };

    /// <summary>
    /// Made longer along x alone, as paper round a tube is that lies further out than the metal: arcs become chords, and letters keep their
    /// shape.
    /// </summary>
    /// <exception cref="ArgumentException">A pattern, whose holes would be none.</exception>
    public static Item Stretched(Item item, double factor)
    {
        Point2 To(Point2 p) => new(factor * p.U, p.V);
        return item switch
        {
            Stroke stroke => Stroke.Through(stroke.Flattened(Chord).Select(To), stroke.Pen, stroke.Closed),
            Circle circle => Stretched(circle.AsStroke, factor),
            Area area => area with { Outlines = [.. area.Outlines.Select(outline => Stretched(outline, factor))] },
            Text text => text with { At = To(text.At) },
            _ => throw new ArgumentException($"cannot be stretched: {item}"),
        };
    }

    /// <summary>
    /// What of the item lies within; a text that is cut off becomes strokes, so that none is found on two pages in part.
    /// </summary>
    /// <exception cref="ArgumentException">A filled area, which is not cut.</exception>
    public static IEnumerable<Item> Within(Item item, Box2 window)
    {
        var bounds = Bounds(item);
        if (bounds.IsEmpty || !Meet(bounds, window))
            return [];
        if (bounds.Join(window) == window)
            return [item];
        return item switch
        {
            Stroke stroke => Cut(stroke, window),
            Circle circle => Cut(circle.AsStroke, window),
            Text text => text.Lines.SelectMany(letter => Cut(Stroke.Through(letter, new(text.Pen.Name, text.Thickness)), window)),
            Area { Pen.Fill: null } area => area.Outlines.SelectMany(outline => Within(outline, window)),
            Pattern pattern => pattern.Items.SelectMany(part => Within(part, window)),
            _ => throw new ArgumentException($"cannot be cut: {item}"),
        };
    }

    /// <summary>Whether two boxes have a point in common.</summary>
    public static bool Meet(Box2 a, Box2 b) =>
        a.Min.U <= b.Max.U && b.Min.U <= a.Max.U && a.Min.V <= b.Max.V && b.Min.V <= a.Max.V;

    private static Box2 Around(IEnumerable<Point2> points) => points.Aggregate(Box2.Empty, (box, p) => box.Join(p));

    private static Point2[] Corners(Text text)
    {
        var along = Point2.Polar(text.Width, text.Angle);
        // Letters hang a third of a capital below the line, and accents stand as much above.
        var up = text.Height * Point2.Polar(1, text.Angle).Turned;
        var (low, high) = (text.Start - (1.0 / 3 * up), text.Start + (4.0 / 3 * up));
        return [low, low + along, high, high + along];
    }

    private static IEnumerable<Item> Cut(Stroke stroke, Box2 window)
    {
        var flat = stroke.Flattened(Chord);
        var points = stroke.Closed ? flat.Add(flat[0]) : flat;
        var run = new List<Point2>();
        for (var i = 0; i + 1 < points.Length; i++)
        {
            var (a, b) = (points[i], points[i + 1]);
            if (Share(a, b, window) is not { } share)
                continue;
            if (run.Count > 0 && share.Start > 0)
            {
                yield return Stroke.Through(run, stroke.Pen);
                run.Clear();
            }

            if (run.Count == 0)
                run.Add(a + (share.Start * (b - a)));
            run.Add(share.End == 1 ? b : a + (share.End * (b - a)));
            if (share.End == 1)
                continue;
            yield return Stroke.Through(run, stroke.Pen);
            run.Clear();
        }

        if (run.Count > 0)
            yield return Stroke.Through(run, stroke.Pen);
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
