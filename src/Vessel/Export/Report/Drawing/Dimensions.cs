using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>
/// Dimensions in the manner of ISO 129-1: extension lines, a line with slim filled arrows, the figure above it, to be read from
/// below or from the right; and figures at the ends of extension lines from a common origin. Page units, y down.
/// </summary>
internal static class Dimensions
{
    private const double Arrow = 13;
    private const double HalfArrow = 2.6;
    private const double Beyond = 5;

    /// <summary>Lines of text keep so far apart.</summary>
    private const double Apart = Sheet.TextHeight + 2;

    /// <summary>A length along x, its line at height <paramref name="y"/>.</summary>
    public static void Across(Sheet sheet, Point2 a, Point2 b, double y, string text)
    {
        var beyond = new Point2(0, y > a.V ? Beyond : -Beyond);
        var (from, to) = (new Point2(a.U, y), new Point2(b.U, y));
        sheet.Line("dimension", a, from + beyond);
        sheet.Line("dimension", b, to + beyond);
        Arrows(sheet, from, to);
        sheet.Text("figure", (0.5 * (from + to)) - new Point2(0, 5), text);
    }

    /// <summary>A length along y, its line at <paramref name="x"/>; the figure is read from the right.</summary>
    public static void Up(Sheet sheet, Point2 a, Point2 b, double x, string text)
    {
        var beyond = new Point2(x > a.U ? Beyond : -Beyond, 0);
        var (from, to) = (new Point2(x, a.V), new Point2(x, b.V));
        sheet.Line("dimension", a, from + beyond);
        sheet.Line("dimension", b, to + beyond);
        Arrows(sheet, from, to);
        sheet.Text("figure", (0.5 * (from + to)) - new Point2(5, 0), text, turn: 90);
    }

    /// <summary>Figures along x from the origin of the flat, on the line <paramref name="y"/> above the picture.</summary>
    public static void Abscissae(Sheet sheet, IEnumerable<(double Place, double From, string Text)> figures, double y)
    {
        foreach (var (place, from, text, at) in Spread(figures))
        {
            sheet.Path("dimension", $"M{Sheet.P(new(place, from))}V{Sheet.T(y + 16)}L{Sheet.P(new(at, y + 4))}V{Sheet.T(y)}");
            sheet.Text("figure", new(at + (Sheet.TextHeight / 3), y - 4), text, "start", 90);
        }
    }

    /// <summary>The same along y, to the right of the picture.</summary>
    public static void Ordinates(Sheet sheet, IEnumerable<(double Place, double From, string Text)> figures, double x)
    {
        foreach (var (place, from, text, at) in Spread(figures))
        {
            sheet.Path("dimension", $"M{Sheet.P(new(from, place))}H{Sheet.T(x - 16)}L{Sheet.P(new(x - 4, at))}H{Sheet.T(x)}");
            sheet.Text("figure", new(x + 4, at + (Sheet.TextHeight / 3)), text, "start");
        }
    }

    /// <summary>In order, each moved on as far as its text needs, and back again where that leaves room.</summary>
    private static IEnumerable<(double Place, double From, string Text, double At)> Spread(
        IEnumerable<(double Place, double From, string Text)> figures)
    {
        var sorted = figures.OrderBy(figure => figure.Place).ToList();
        var at = sorted.Select(figure => figure.Place).ToArray();
        for (var i = 1; i < at.Length; i++)
            at[i] = Math.Max(at[i], at[i - 1] + Apart);
        // A bunch that was pushed one way goes back by half of its last one's shift.
        for (var start = 0; start < at.Length;)
        {
            var end = start + 1;
            while (end < at.Length && at[end] - at[end - 1] <= Apart + 1e-9)
                end++;
            var back = (at[end - 1] - sorted[end - 1].Place) / 2;
            var free = start == 0 ? double.MaxValue : at[start] - at[start - 1] - Apart;
            for (var i = start; i < end; i++)
                at[i] -= Math.Min(back, free);
            start = end;
        }

        return sorted.Select((figure, i) => (figure.Place, figure.From, figure.Text, at[i]));
    }

    private static void Arrows(Sheet sheet, Point2 from, Point2 to)
    {
        sheet.Line("dimension", from, to);
        var length = (to - from).Length;
        if (length < 3 * Arrow)
            return;
        var along = (to - from).Unit();
        foreach (var (tip, back) in new[] { (from, along), (to, -along) })
        {
            var (foot, side) = (tip + (Arrow * back), HalfArrow * back.Turned);
            sheet.Path("arrow", $"M{Sheet.P(tip)}L{Sheet.P(foot + side)}L{Sheet.P(foot - side)}z");
        }
    }
}
