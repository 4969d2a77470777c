using System.Globalization;
using Vessel.Export.Drawing;
using Vessel.Function;

namespace Vessel.Export.Report.Drawing;

/// <summary>A range against a size, the size by decades.</summary>
internal static class CurvePicture
{
    private const int Steps = 4;

    private static readonly double[] _labelled = [1, 2, 5];

    private static readonly Chart _chart = new(560, 300);

    public static Picture Of(FigureCurve curve)
    {
        var (first, last) = (curve.Points[0].At, curve.Points[^1].At);
        double Along(double at) => Math.Log(at / first) / Math.Log(last / first);
        Stroke Line(IEnumerable<(double At, double Value)> points, Pen pen, bool closed = false) =>
            Stroke.Through(points.Select(point => _chart.At(Along(point.At), point.Value / curve.Most)), pen, closed);
        return new(
            curve.Name,
            curve.Title,
            $"Likely {Whole(curve.Points[0].Value.Likely)} {curve.Up.Unit} at {Whole(first)} {curve.Along.Unit}, "
            + $"{Whole(curve.Points[^1].Value.Likely)} {curve.Up.Unit} at {Whole(last)} {curve.Along.Unit}; the table holds the figures.",
            _chart.Frame(above: 20),
            [
                .. Round(first, last).SelectMany(at => _chart.Upright(Along(at), Whole(at))),
                .. Enumerable.Range(0, Steps + 1).SelectMany(i => _chart.Level((double)i / Steps, Whole(curve.Most * i / Steps))),
                Line(curve.Points.Select(p => (p.At, p.Value.High)).Concat(curve.Points.Reverse().Select(p => (p.At, p.Value.Low))),
                    Pens.Band, closed: true),
                _chart.Axis,
                Line(curve.Points.Select(p => (p.At, p.Value.Likely)), Pens.Curve),
                .. _chart.Names($"{curve.Along.Title}, {curve.Along.Unit}", $"{curve.Up.Title}, {curve.Up.Unit}"),
            ]);
    }

    /// <summary>1, 2 and 5 of each decade.</summary>
    private static IEnumerable<double> Round(double first, double last) =>
        from decade in Enumerable.Range((int)Math.Floor(Math.Log10(first)), 12)
        from digit in _labelled
        let at = digit * Math.Pow(10, decade)
        where at >= first * (1 - 1e-9) && at <= last * (1 + 1e-9)
        select at;

    private static string Whole(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
