using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Export.Report.Drawing;

/// <summary>The gap along one joint, small, with the lines that it should and must stay under.</summary>
internal static class GapPicture
{
    private const double Width = 320;
    private const double Height = 150;
    private const double Left = 62;
    private const double Right = 92;
    private const double Below = 30;

    /// <summary>The axis goes so far beyond the highest line.</summary>
    private const double Beyond = 1.15;

    public static void Draw(WeldFigures weld, double aim, double most, string limits, Sizes sizes, Html html)
    {
        var joint = weld.Joint;
        var top = Beyond * Math.Max(weld.GapNormal, Math.Max(aim, most));
        Point2 At(double t, double gap) => new(Width * (t - joint.Domain.Start) / joint.Domain.Length, Height * (1 - (gap / top)));
        var sheet = new Sheet(html, new(default, new(Width, Height)), 1, new(new(-Left, -16), new(Width + Right, Height + Below)));
        var stations = weld.Stations.Append((Parameter: joint.Domain.End, At: joint.Along(joint.Domain.End))).ToList();
        var worst = weld.Stations.MaxBy(station => station.At.GapNormal).Parameter;
        sheet.Draw(
            $"gap-{joint.Number}",
            $"Gap along {joint.Number}, {joint.Name}",
            $"From {sizes.Fine(weld.Stations.Min(station => station.At.GapNormal))} to {sizes.Fine(weld.GapNormal)} {sizes.Unit}, widest at "
            + $"{Place(joint, worst, sizes)}{(joint.IsRound ? " degrees" : $" {sizes.Unit}")}; {limits}.",
            () =>
            {
                sheet.Path("axis", $"M{Sheet.P(new(0, 0))}V{Sheet.T(Height)}H{Sheet.T(Width)}");
                for (var i = 0; i <= 4; i++)
                {
                    var t = joint.Domain.At(i / 4.0);
                    sheet.Line("grid", At(t, 0), At(t, top));
                    sheet.Text("figure", At(t, 0) + new Point2(0, 22), Place(joint, t, sizes));
                }

                Limit(sheet, "hidden", At(joint.Domain.End, aim), $"aim {sizes.Fine(aim)}", aim <= most);
                Limit(sheet, "bend", At(joint.Domain.End, most), $"most {sizes.Fine(most)}", aim > most);
                sheet.Path("curve", "M" + string.Join('L', stations.Select(station => Sheet.P(At(station.Parameter, station.At.GapNormal)))));
                sheet.Text("figure", new(-8, Height + 5), "0", "end");
                sheet.Text("figure", At(joint.Domain.Start, weld.GapNormal) + new Point2(-8, 6), sizes.Fine(weld.GapNormal), "end");
            });
    }

    private static string Place(Joint joint, double t, Sizes sizes) =>
        joint.IsRound ? Sizes.Text(Turns.ToDegrees(t), 0) : sizes.Length(t - joint.Domain.Start);

    /// <summary>A line across with its word at the right end: below it or above it, so that two near lines keep theirs apart.</summary>
    private static void Limit(Sheet sheet, string kind, Point2 end, string text, bool below)
    {
        sheet.Line(kind, new(0, end.V), end);
        sheet.Text("figure", end + new Point2(6, below ? 15 : -2), text, "start");
    }
}
