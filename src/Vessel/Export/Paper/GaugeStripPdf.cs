using System.Collections.Immutable;
using System.Globalization;
using Vessel.Export.Drawing;
using Vessel.Export.Pdf;
using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>
/// A strip to lay along a dipstick or behind a sight tube: on one side volumes at the heights that hold them, on the other the
/// height above the inside floor; and the levels at which something happens.
/// </summary>
internal static class GaugeStripPdf
{
    private const double Width = 30;

    public static IEnumerable<Page> Pages(Build build) =>
        TemplatePages.Of(Strip(build.Assembly), build.Options.Paper.Size, TemplatesPdf.VesselName(build.Assembly.Design));

    internal static Template Strip(Assembly assembly)
    {
        var (floor, ceiling) = (assembly.Attitude.Depth.Start, assembly.Attitude.Depth.End);
        var height = ceiling - floor;
        return new(
            "dipstick: strip for a dipstick or sight tube",
            [
                Stroke.Rectangle(new(default, new(Width, height)), Pens.Edge),
                .. Heights(height),
                .. GaugeScale.Of(assembly.Attitude, assembly.Capacity).SelectMany(mark => Mark(mark.Height - floor, mark.Text)),
                .. Events(assembly.Capacity, floor),
                Text.Left("ml", new(Width - 8, height + 2), 2.5),
                Text.Left("mm", new(1, height + 2), 2.5),
            ],
            [
                "Left: mm above the lowest place inside, on the vessel's axis. Right: ml held at that level, vessel upright, all rooms "
                    + "level.",
                $"The lower edge stands on the inside floor, {NoteText.Length(floor)} mm above the shell's lower edge (below it when "
                    + "negative).",
                $"A stick that stands in the {assembly.Design.Flow.Liquid.Word} lifts the level a little; wipe, dip, read once. By "
                    + "calculation: check with a measured litre.",
            ]);
    }

    private static IEnumerable<Item> Heights(double height)
    {
        var step = height > 2000 ? 10 : 1;
        for (var mm = 0; mm <= Math.Min(height, 20_000); mm += step)
        {
            var length = mm % (10 * step) == 0 ? 5 : mm % (5 * step) == 0 ? 3.5 : 2;
            yield return Stroke.Line(new(0, mm), new(length, mm), Pens.Thin);
            if (mm > 0 && mm % (10 * step) == 0)
                yield return Text.Left(mm.ToString(CultureInfo.InvariantCulture), new(5.6, mm - 1), 2);
        }
    }

    private static IEnumerable<Item> Mark(double height, string text) =>
    [
        Stroke.Line(new(Width - 8, height), new(Width, height), Pens.Edge),
        Text.Right(text, new(Width - 8.6, height - 1), 2),
    ];

    /// <summary>Dashed across the strip, named beside it; those of one level stand behind each other.</summary>
    private static IEnumerable<Item> Events(Capacity capacity, double floor) =>
        capacity.Events.GroupBy(found => Math.Round(found.Height, 1)).SelectMany(same => new Item[]
        {
            Stroke.Line(new(0, same.First().Height - floor), new(Width + 4, same.First().Height - floor), Pens.Hidden),
            Text.Left(string.Join("; ", same.Select(found => found.What)), new(Width + 5, same.First().Height - floor - 1), 2),
        });
}
