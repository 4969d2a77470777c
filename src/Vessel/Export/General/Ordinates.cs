using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>Heights from one datum as figures at the ends of extension lines (ISO 129-1), and single lengths with arrows.</summary>
internal static class Ordinates
{
    private const double Letter = 2.2;

    private const double Step = 3.2;

    /// <param name="x">Where the figures begin, on the far side of the view.</param>
    /// <param name="from">Where extension lines begin, next to the view.</param>
    public static IEnumerable<Item> Items(IEnumerable<(double Place, string Text)> figures, double from, double x, Interval room)
    {
        var sorted = figures.DistinctBy(figure => figure.Text).OrderBy(figure => figure.Place).ToList();
        var places = new double[sorted.Count];
        var low = room.Start;
        for (var i = 0; i < sorted.Count; i++)
            low = places[i] = Math.Max(sorted[i].Place, low + Step);
        var high = room.End;
        for (var i = sorted.Count - 1; i >= 0; i--)
            high = places[i] = Math.Min(places[i], high - Step);
        var way = Math.Sign(x - from);
        for (var i = 0; i < sorted.Count; i++)
        {
            var (y, text) = sorted[i];
            yield return Stroke.Through(
                [new(from, y), new(x - (way * 4), y), new(x - (way * 1.5), places[i]), new(x, places[i])], Pens.Thin);
            var at = new Point2(x + (way * 0.8), places[i] - (Letter / 2));
            yield return way > 0 ? Text.Left(text, at, Letter) : Text.Right(text, at, Letter);
        }
    }

    /// <summary>A length along x below the view.</summary>
    public static IEnumerable<Item> Across(Point2 a, Point2 b, double y, string text)
    {
        var (from, to) = (new Point2(a.U, y), new Point2(b.U, y));
        return
        [
            Stroke.Line(a, from - new Point2(0, 1.5), Pens.Thin),
            Stroke.Line(b, to - new Point2(0, 1.5), Pens.Thin),
            Stroke.Line(from, to, Pens.Thin),
            WeldCallout.Arrow(from, to - from),
            WeldCallout.Arrow(to, from - to),
            Text.Middle(text, (0.5 * (from + to)) + new Point2(0, 2), Letter),
        ];
    }
}
