using System.Globalization;
using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>A range against a size, the size by decades.</summary>
internal static class CurvePicture
{
    private const double Width = 560;
    private const double Height = 300;
    private const double Left = 78;
    private const double Below = 58;
    private const int Steps = 4;

    private static readonly double[] _labelled = [1, 2, 5];

    public static void Draw(FigureCurve curve, Html html)
    {
        var (first, last) = (curve.Points[0].At, curve.Points[^1].At);
        Point2 At(double at, double value) =>
            new(Width * Math.Log(at / first) / Math.Log(last / first), Height * (1 - (value / curve.Most)));
        string Line(IEnumerable<(double At, double Value)> points) => string.Join('L', points.Select(point => Sheet.P(At(point.At, point.Value))));
        var sheet = new Sheet(html, new(default, new(Width, Height)), 1, new(new(-Left, -20), new(Width + 20, Height + Below)));
        sheet.Draw(
            curve.Name,
            curve.Title,
            $"Likely {Whole(curve.Points[0].Value.Likely)} {curve.Up.Unit} at {Whole(first)} {curve.Along.Unit}, "
            + $"{Whole(curve.Points[^1].Value.Likely)} {curve.Up.Unit} at {Whole(last)} {curve.Along.Unit}; the table holds the figures.",
            () =>
            {
                foreach (var at in Round(first, last))
                {
                    sheet.Line("grid", At(at, 0), At(at, curve.Most));
                    sheet.Text("figure", At(at, 0) + new Point2(0, 22), Whole(at));
                }

                for (var i = 0; i <= Steps; i++)
                {
                    var value = curve.Most * i / Steps;
                    sheet.Line("grid", At(first, value), At(last, value));
                    sheet.Text("figure", At(first, value) + new Point2(-8, 6), Whole(value), "end");
                }

                sheet.Path("band", "M" + Line(curve.Points.Select(p => (p.At, p.Value.High))) + "L" + Line(curve.Points.Reverse().Select(p => (p.At, p.Value.Low))) + "Z");
                sheet.Path("axis", $"M{Sheet.P(At(first, curve.Most))}V{Sheet.T(Height)}H{Sheet.T(Width)}");
                sheet.Path("curve", "M" + Line(curve.Points.Select(p => (p.At, p.Value.Likely))));
                sheet.Text("name", new(Width / 2, Height + 48), $"{curve.Along.Title}, {curve.Along.Unit}");
                sheet.Text("name", new(-Left + 20, Height / 2), $"{curve.Up.Title}, {curve.Up.Unit}", turn: 90);
            });
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
