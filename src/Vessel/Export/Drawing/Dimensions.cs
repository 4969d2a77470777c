using Vessel.Geometry;

namespace Vessel.Export.Drawing;

/// <summary>
/// Dimensions in the manner of ISO 129-1: extension lines, a line with slim filled arrows, the figure above it, to be read from below or
/// from the right; and figures at the ends of extension lines from a common origin.
/// </summary>
/// <param name="Letter">Height of a figure's capitals, mm or units of the page; all else is in proportion.</param>
internal sealed record Dimensions(double Letter)
{
    private double Beyond => 0.5 * Letter;

    /// <summary>Lines of figures keep so far apart.</summary>
    private double Row => 1.5 * Letter;

    /// <summary>The length between two points, upright or level.</summary>
    /// <param name="off">Vector from the first point square to what is measured, to the line of the dimension.</param>
    public IEnumerable<Item> Between(Point2 a, Point2 b, Point2 off, string text)
    {
        var (from, outward) = (a + off, off.Unit());
        var to = b + ((from - b).Dot(outward) * outward);
        var angle = Math.Abs(outward.U) > Math.Abs(outward.V) ? Math.PI / 2 : 0;
        yield return Stroke.Line(a, from + (Beyond * outward), Pens.Dimension);
        yield return Stroke.Line(b, to + (Beyond * outward), Pens.Dimension);
        yield return Stroke.Line(from, to, Pens.Dimension);
        // Arrows in a short line would meet.
        if ((to - from).Length > 3 * Letter)
        {
            yield return Arrow(from, to - from, Letter);
            yield return Arrow(to, from - to, Letter);
        }

        yield return Figure(text, (0.5 * (from + to)) + (0.4 * Letter * Point2.Polar(1, angle).Turned), Anchor.Middle, angle);
    }

    /// <summary>Figures of places along y, or along x where they are upright, at the ends of lines out of the picture.</summary>
    /// <param name="from">Where the lines begin, next to the picture.</param>
    /// <param name="end">Where the figures begin, further out.</param>
    public IEnumerable<Item> Ordinates(IEnumerable<(double Place, string Text)> figures, double from, double end, Interval room,
        bool upright = false)
    {
        var sorted = figures.DistinctBy(figure => figure.Text).OrderBy(figure => figure.Place).ToList();
        var places = Spread.Of([.. sorted.Select(figure => (figure.Place, Row))], room);
        var way = Math.Sign(end - from);
        Point2 At(double along, double place) => upright ? new(place, along) : new(along, place);
        foreach (var ((place, text), at) in sorted.Zip(places))
        {
            yield return Stroke.Through(
                [At(from, place), At(end - (way * 1.5 * Letter), place), At(end - (way * 0.4 * Letter), at), At(end, at)], Pens.Dimension);
            var angle = upright ? Math.PI / 2 : 0;
            var foot = At(end + (way * 0.4 * Letter), at) - (Letter / 2 * Point2.Polar(1, angle).Turned);
            yield return Figure(text, foot, way > 0 ? Anchor.Start : Anchor.End, angle);
        }
    }

    /// <summary>A slim filled head whose tip is at the place.</summary>
    /// <param name="back">Point from the tip along the shaft.</param>
    public static Area Arrow(Point2 tip, Point2 back, double length)
    {
        var way = back.Length > 1e-9 ? length * back.Unit() : new(length, 0);
        return Area.Within([tip, tip + way + (0.18 * way.Turned), tip + way - (0.18 * way.Turned)], Pens.Arrow);
    }

    private Text Figure(string text, Point2 at, Anchor anchor, double angle) => new(text, at, Letter, Pens.Figure, anchor, angle);
}
