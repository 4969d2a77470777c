using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Export.Report.Drawing;

/// <summary>The gap along one joint, small, with the lines that it should and must stay under.</summary>
internal static class GapPicture
{
    /// <summary>The axis goes so far beyond the highest line.</summary>
    private const double Beyond = 1.15;

    private static readonly Chart _chart = new(320, 150, 62);

    public static Picture Of(WeldFigures weld, double aim, double most, string limits, Sizes sizes)
    {
        var joint = weld.Joint;
        var top = Beyond * Math.Max(weld.GapNormal, Math.Max(aim, most));
        var stations = weld.Stations.Append((Parameter: joint.Domain.End, At: joint.Along(joint.Domain.End)));
        var worst = weld.Stations.MaxBy(station => station.At.GapNormal).Parameter;
        return new(
            $"gap-{joint.Number}",
            $"Gap along {joint.Number}, {joint.Name}",
            $"From {sizes.Fine(weld.Stations.Min(station => station.At.GapNormal))} to {sizes.Fine(weld.GapNormal)} {sizes.Unit}, widest "
            + "at "
            + $"{Place(joint, worst, sizes)}{(joint.IsRound ? " degrees" : $" {sizes.Unit}")}; {limits}.",
            _chart.Frame(above: 16, right: 92, below: 30),
            [
                _chart.Axis,
                .. Enumerable.Range(0, 5).Select(i => i / 4.0)
                    .SelectMany(share => _chart.Upright(share, Place(joint, joint.Domain.At(share), sizes))),
                .. Limit(Pens.Hidden, aim / top, $"aim {sizes.Fine(aim)}", aim <= most),
                .. Limit(Pens.Bend, most / top, $"most {sizes.Fine(most)}", aim > most),
                Stroke.Through(
                    stations.Select(s => _chart.At((s.Parameter - joint.Domain.Start) / joint.Domain.Length, s.At.GapNormal / top)),
                    Pens.Curve),
                _chart.Beside(0, "0"),
                _chart.Beside(weld.GapNormal / top, sizes.Fine(weld.GapNormal)),
            ]);
    }

    private static string Place(Joint joint, double t, Sizes sizes) =>
        joint.IsRound ? Sizes.Text(Turns.ToDegrees(t), 0) : sizes.Length(t - joint.Domain.Start);

    /// <summary>A line across with its word at the right end: below it or above it, so that two near lines keep theirs apart.</summary>
    private static Item[] Limit(Pen pen, double up, string text, bool below) =>
    [
        Stroke.Line(_chart.At(0, up), _chart.At(1, up), pen),
        Chart.Figure(text, _chart.At(1, up) + new Point2(6, below ? -15 : 2), Anchor.Start),
    ];
}
