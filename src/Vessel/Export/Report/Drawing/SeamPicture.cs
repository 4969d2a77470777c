using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Pictures;
using Vessel.Export.Report.Model;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>The picture of the whole with every seam over it: drawn through where it can be seen, dashed where it is hidden.</summary>
internal static class SeamPicture
{
    /// <summary>A seam lies in the angle between two parts, whose facets may stand so far before it, samples.</summary>
    private const double Before = 12;

    private const double NumberHeight = Picture.TextHeight;

    public static void Write(StillPictures pictures, Html html)
    {
        var outlook = pictures.WholeRaster.Outlook;
        var (width, height) = (outlook.Width / Finish.Fine, outlook.Height / Finish.Fine);
        var seams = pictures.Model.Seams.Select(seam => (seam.Joint.Number, Spans: Seen(seam, pictures.WholeRaster))).ToList();
        new Picture(
            "whole",
            "The vessel, seen from the front, the left and above",
            $"With its welds: {string.Join(", ", pictures.Model.Seams.Select(seam => $"{seam.Joint.Number} {seam.Joint.Name}"))}.",
            new(new(0, -height), new(width, 0)),
            [
                .. seams.SelectMany(seam => Runs(seam.Spans.Where(span => !span.IsSeen), Pens.HiddenSeam)),
                .. seams.SelectMany(seam => Runs(seam.Spans.Where(span => span.IsSeen), Pens.Seam)),
                .. Apart([.. seams.Where(seam => seam.Spans.Length > 0).Select(seam => (seam.Number, Place(seam.Spans)))])
                    .Select(number => new Text(number.Number, number.At, Picture.Letter, Pens.Number, Anchor.Middle)),
            ]).Write(html, () => html.Mark(
                "image",
                ("width", Sizes.Count(width)),
                ("height", Sizes.Count(height)),
                ("href", $"data:image/png;base64,{Convert.ToBase64String(pictures.Whole)}")));
    }

    /// <summary>The spans between neighbouring places of a seam, in pixels.</summary>
    private static ImmutableArray<(Point2 A, Point2 B, bool IsSeen)> Seen(SeamLines seam, Raster raster) =>
    [
        .. seam.Lines.SelectMany(line => line.Zip(line.Skip(1), (a, b) =>
        {
            var (from, to) = (raster.Outlook.Seen(a), raster.Outlook.Seen(b));
            var middle = 0.5 * (from + to);
            var column = Math.Clamp((int)middle.X, 0, raster.Outlook.Width - 1);
            var row = Math.Clamp((int)middle.Y, 0, raster.Outlook.Height - 1);
            var seen = middle.Z + Before >= raster.DepthAt((row * raster.Outlook.Width) + column);
            return (Pixel(from), Pixel(to), seen);
        })),
    ];

    private static Point2 Pixel(Vector3 sample) => new(sample.X / Finish.Fine, -sample.Y / Finish.Fine);

    /// <summary>Spans that follow each other as one line.</summary>
    private static IEnumerable<Stroke> Runs(IEnumerable<(Point2 A, Point2 B, bool IsSeen)> spans, Pen pen)
    {
        var run = new List<Point2>();
        foreach (var (a, b, _) in spans)
        {
            if (run.Count > 0 && run[^1] != a)
            {
                yield return Stroke.Through(run, pen);
                run.Clear();
            }

            if (run.Count == 0)
                run.Add(a);
            run.Add(b);
        }

        if (run.Count > 0)
            yield return Stroke.Through(run, pen);
    }

    /// <summary>Place in the middle of what can be seen of it, or of all of it.</summary>
    private static Point2 Place(ImmutableArray<(Point2 A, Point2 B, bool IsSeen)> spans)
    {
        var seen = spans.Where(span => span.IsSeen).ToList();
        return seen.Count > 0 ? seen[seen.Count / 2].A : spans[spans.Length / 3].A;
    }

    /// <summary>Numbers that would meet are moved down.</summary>
    private static List<(string Number, Point2 At)> Apart(List<(string Number, Point2 At)> numbers)
    {
        var placed = new List<(string Number, Point2 At)>();
        foreach (var (number, at) in numbers.OrderByDescending(number => number.At.V).ThenBy(number => number.At.U))
        {
            var free = at;
            while (placed.Exists(other => Math.Abs(other.At.U - free.U) < 2.6 * NumberHeight
                && Math.Abs(other.At.V - free.V) < NumberHeight))
                free -= new Point2(0, NumberHeight / 2);
            placed.Add((number, free));
        }

        return placed;
    }
}
