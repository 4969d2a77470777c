using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>Volume held against the height of the level, upright, with what happens on the way.</summary>
internal static class CapacityPicture
{
    private const double Width = 560;
    private const double Height = 340;
    private const double Left = 78;
    private const double Below = 58;
    private const int Steps = 5;

    public static void Draw(Capacity capacity, Sizes sizes, Html html)
    {
        var levels = capacity.Levels;
        var (low, high) = (levels[0].Height, levels[^1].Height);
        var most = Math.Max(levels[^1].Volume, 1e-9);
        Point2 At(double height, double volume) => new(
            Width * (height - low) / Math.Max(high - low, 1e-9), Height * (1 - (volume / most)));
        var sheet = new Sheet(html, new(default, new(Width, Height)), 1, new(new(-Left, -30), new(Width + 20, Height + Below)));
        sheet.Draw(
            "capacity",
            "Volume against level",
            $"Upright, from empty at {sizes.WithUnit(low)} to {Sizes.Litres(levels[^1].Volume)} litres at {sizes.WithUnit(high)}.",
            () =>
            {
                DrawAxes((low, high), most, At, sizes, sheet);
                sheet.Path("curve", "M" + string.Join('L', levels.Select(level => Sheet.P(At(level.Height, level.Volume)))));
                DrawEvents(capacity.Events, At, sheet);
            });
    }

    private static void DrawAxes(
        (double Low, double High) levels, double most, Func<double, double, Point2> at, Sizes sizes, Sheet sheet)
    {
        sheet.Path("axis", $"M{Sheet.P(at(levels.Low, most))}V{Sheet.T(Height)}H{Sheet.T(Width)}");
        foreach (var height in Round(levels.Low, levels.High, sizes.Unit == "in" ? 25.4 : 1))
        {
            var foot = at(height, 0);
            sheet.Line("grid", foot, at(height, most));
            sheet.Text("figure", foot + new Point2(0, 22), sizes.Length(height));
        }

        foreach (var volume in Round(0, most, 1e6))
        {
            var side = at(levels.Low, volume);
            sheet.Line("grid", side, at(levels.High, volume));
            sheet.Text("figure", side + new Point2(-8, 6), Sizes.Litres(volume), "end");
        }

        sheet.Text("name", new(Width / 2, Height + 48), $"height of the level on the axis, {sizes.Unit}");
        sheet.Text("name", new(-Left + 20, Height / 2), "litres held", turn: 90);
    }

    /// <summary>Numbered as in the table; numbers of one place stand side by side.</summary>
    private static void DrawEvents(ImmutableArray<LevelEvent> events, Func<double, double, Point2> at, Sheet sheet)
    {
        var last = new Point2(double.NegativeInfinity, 0);
        for (var i = 0; i < events.Length; i++)
        {
            var point = at(events[i].Height, events[i].Volume);
            sheet.Path("event", SvgPath.Circle(point, 6));
            var text = new Point2(Math.Max(point.U - 12, last.U + 16), point.V - 12);
            if (Math.Abs(text.V - last.V) > Sheet.TextHeight)
                text = new(point.U - 12, text.V);
            sheet.Text("hole", text, Sizes.Count(i + 1), "end");
            last = text;
        }
    }

    /// <summary>Round values inside the range, about five, in steps of 1, 2 or 5 of the unit's decades.</summary>
    private static IEnumerable<double> Round(double low, double high, double unit)
    {
        var step = (high - low) / unit / Steps;
        if (!(step > 0))
            yield break;
        var decade = Math.Pow(10, Math.Floor(Math.Log10(step)));
        var rest = step / decade;
        var nice = decade * (rest > 5 ? 10 : rest > 2 ? 5 : rest > 1 ? 2 : 1);
        for (var i = (long)Math.Ceiling((low / unit / nice) - 1e-9); i * nice <= (high / unit) + (1e-9 * nice); i++)
            yield return i * nice * unit;
    }
}
