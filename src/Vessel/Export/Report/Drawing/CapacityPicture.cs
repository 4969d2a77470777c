using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>Volume held against the height of the level, upright, with what happens on the way.</summary>
internal static class CapacityPicture
{
    private const int Steps = 5;

    private static readonly Chart _chart = new(560, 340);

    public static Picture Of(Capacity capacity, Sizes sizes)
    {
        var levels = capacity.Levels;
        var (low, high) = (levels[0].Height, levels[^1].Height);
        var most = Math.Max(levels[^1].Volume, 1e-9);
        double Along(double height) => (height - low) / Math.Max(high - low, 1e-9);
        return new(
            "capacity",
            "Volume against level",
            $"Upright, from empty at {sizes.WithUnit(low)} to {Sizes.Litres(levels[^1].Volume)} litres at {sizes.WithUnit(high)}.",
            _chart.Frame(),
            [
                _chart.Axis,
                .. Round(low, high, sizes.Unit == "in" ? 25.4 : 1)
                    .SelectMany(height => _chart.Upright(Along(height), sizes.Length(height))),
                .. Round(0, most, 1e6).SelectMany(volume => _chart.Level(volume / most, Sizes.Litres(volume))),
                .. _chart.Names($"height of the level on the axis, {sizes.Unit}", "litres held"),
                Stroke.Through(levels.Select(level => _chart.At(Along(level.Height), level.Volume / most)), Pens.Curve),
                .. Events([.. capacity.Events.Select(found => _chart.At(Along(found.Height), found.Volume / most))]),
            ]);
    }

    /// <summary>Numbered as in the table; numbers of one place stand side by side.</summary>
    private static IEnumerable<Item> Events(ImmutableArray<Point2> places)
    {
        var last = new Point2(double.NegativeInfinity, 0);
        foreach (var (i, at) in places.Index())
        {
            yield return new Circle(at, 6, Pens.Event);
            var (aside, up) = (at.U - 12, at.V + 12);
            last = new(Math.Abs(up - last.V) > Picture.TextHeight ? aside : Math.Max(aside, last.U + 16), up);
            yield return new Text(Sizes.Count(i + 1), last, Picture.Letter, Pens.Hole, Anchor.End);
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
