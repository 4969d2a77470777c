using System.Collections.Immutable;
using System.Globalization;
using Vessel.Export.Pdf;
using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>
/// A strip to lay along a dipstick or behind a sight tube: on one side volumes at the heights that hold them, on the other the
/// height above the inside floor; and the levels at which something happens.
/// </summary>
internal static class DipstickPdf
{
    private const double Width = 30;

    private const int MostMarks = 24;

    /// <summary>Two hundredths of a millilitre: less than a pen is wide. mm3.</summary>
    private const double Near = 20;

    public static void Write(Build build, Stream to)
    {
        var (design, paper) = (build.Assembly.Design, build.Options.Paper);
        PdfDocument.Write(
            $"{design.Name}: strip for dipstick or sight tube",
            $"vessel {build.Options.ToolVersion}",
            [.. TemplatePages.Of(Strip(build.Assembly), paper.Size, TemplatesPdf.VesselName(design))],
            to);
    }

    internal static Template Strip(Assembly assembly)
    {
        var (floor, ceiling) = (assembly.Cavity.Floor, assembly.Cavity.Ceiling);
        var height = ceiling - floor;
        return new(
            "dipstick: strip for a dipstick or sight tube",
            [
                PdfStroke.Rectangle(new(default, new(Width, height)), Pens.Edge),
                .. Heights(height),
                .. Volumes(assembly).SelectMany(mark => Mark(mark.Height - floor, mark.Text)),
                .. Events(assembly.Capacity, floor),
                PdfText.Left("ml", new(Width - 8, height + 2), 2.5),
                PdfText.Left("mm", new(1, height + 2), 2.5),
            ],
            [
                "Left: mm above the lowest place inside, on the vessel's axis. Right: ml of oil held at that level, vessel upright, all rooms level.",
                $"The lower edge stands on the inside floor, {Parts.NoteText.Length(floor)} mm above the shell's lower edge (below it when negative).",
                "A stick that stands in the oil lifts the level a little; wipe, dip, read once. By calculation: check with a measured litre.",
            ]);
    }

    /// <summary>Round volumes with the levels at which they are held.</summary>
    internal static IEnumerable<(double Height, double Volume, string Text)> Volumes(Assembly assembly)
    {
        var levels = assembly.Capacity.Levels;
        var step = Step(levels[^1].Volume / 1000);
        var at = 0;
        for (var i = 1; i * step * 1000 <= levels[^1].Volume; i++)
        {
            var volume = i * step * 1000;
            while (at + 2 < levels.Length && levels[at + 1].Volume < volume)
                at++;
            yield return (
                Level(assembly.Cavity, volume, levels[at], levels[at + 1]),
                volume,
                (i * step).ToString("0.###", CultureInfo.InvariantCulture));
        }
    }

    /// <summary>1, 2 or 5 times a power of ten, ml.</summary>
    private static double Step(double most)
    {
        for (var ten = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(most, 1e-3) / MostMarks))); ; ten *= 10)
        {
            foreach (var step in new[] { 1, 2, 5 })
            {
                if (most / (step * ten) <= MostMarks)
                    return step * ten;
            }
        }
    }

    /// <summary>False position on a rising volume, held between two levels of the table.</summary>
    private static double Level(
        Cavity cavity, double volume, (double Height, double Volume) lower, (double Height, double Volume) upper)
    {
        var (low, high) = (lower.Height, upper.Height);
        var (below, above) = (lower.Volume - volume, upper.Volume - volume);
        for (var i = 0; i < 12 && above > below && high - low > 1e-3; i++)
        {
            // A step in the middle by turns, so that one end does not stay behind.
            var at = i % 3 == 2 ? (low + high) / 2 : low - (below * (high - low) / (above - below));
            var off = cavity.VolumeBelow(at) - volume;
            if (off < 0)
                (low, below) = (at, off);
            else
                (high, above) = (at, off);
            if (Math.Abs(off) < Near)
                return at;
        }

        return (low + high) / 2;
    }

    private static IEnumerable<PdfItem> Heights(double height)
    {
        var step = height > 2000 ? 10 : 1;
        for (var mm = 0; mm <= Math.Min(height, 20_000); mm += step)
        {
            var length = mm % (10 * step) == 0 ? 5 : mm % (5 * step) == 0 ? 3.5 : 2;
            yield return PdfStroke.Line(new(0, mm), new(length, mm), Pens.Thin);
            if (mm > 0 && mm % (10 * step) == 0)
                yield return PdfText.Left(mm.ToString(CultureInfo.InvariantCulture), new(5.6, mm - 1), 2);
        }
    }

    private static IEnumerable<PdfItem> Mark(double height, string text) =>
    [
        PdfStroke.Line(new(Width - 8, height), new(Width, height), Pens.Edge),
        PdfText.Right(text, new(Width - 8.6, height - 1), 2),
    ];

    /// <summary>Dashed across the strip, named beside it; those of one level stand behind each other.</summary>
    private static IEnumerable<PdfItem> Events(Capacity capacity, double floor) =>
        capacity.Events.GroupBy(found => Math.Round(found.Height, 1)).SelectMany(same => new PdfItem[]
        {
            PdfStroke.Line(new(0, same.First().Height - floor), new(Width + 4, same.First().Height - floor), Pens.Hidden),
            PdfText.Left(string.Join("; ", same.Select(found => found.What)), new(Width + 5, same.First().Height - floor - 1), 2),
        });
}
