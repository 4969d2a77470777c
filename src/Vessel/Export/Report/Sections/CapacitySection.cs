using System.Collections.Immutable;
using Vessel.Export.Report.Drawing;
using Vessel.Function;

namespace Vessel.Export.Report.Sections;

/// <summary>What the vessel holds, upright and leaning, and what happens as it fills.</summary>
internal static class CapacitySection
{
    private const int MostRows = 150;

    public static ReportSection Section { get; } = new("capacity", "Capacity", Write)
    {
        AppliesTo = report => report.Build.Assembly.Capacity.Levels.Length > 1,
    };

    private static void Write(ReportContext report, Html html)
    {
        var (capacity, sizes) = (report.Build.Assembly.Capacity, report.Sizes);
        html.Tag("p", $"Usable {Sizes.Litres(capacity.Usable)} L upright: {capacity.LimitedBy}. "
            + $"Brim {Sizes.Litres(capacity.Brim)} L, fillable {Sizes.Litres(capacity.Fillable)} L"
            + (capacity.Leaning.IsEmpty ? "." : $"; leaning, at least {Sizes.Litres(capacity.Worst.Usable)} L stay usable."));
        html.Tag("figure", () =>
        {
            CapacityPicture.Of(capacity, sizes).Write(html);
            html.Tag("figcaption", "Volume against level, upright; numbers as in the table below.");
        });
        if (!capacity.Events.IsEmpty)
        {
            html.Table(
                "event-table",
                "Events as it fills, upright",
                ["No.", Column.Figure($"Level, {sizes.Unit}"), Column.Figure("Held, L"), "Event"],
                [.. capacity.Events.Select(
                    (e, i) => new Cell[] { Sizes.Count(i + 1), sizes.Length(e.Height), Sizes.Litres(e.Volume), e.What })]);
        }

        WriteLeaning(capacity, html);
        html.Tag("details", () =>
        {
            html.Tag("summary", "Table for a dipstick or gauge");
            html.Table(
                "level-table",
                "Volume at each level, upright; levels from the shell's lower edge",
                [Column.Figure($"Level, {sizes.Unit}"), Column.Figure("Held, L")],
                [.. Rows(capacity).Select(level => new Cell[] { sizes.Length(level.Height), Sizes.Litres(level.Volume) })]);
        });
    }

    /// <summary>Every so many of the levels where they are very many, and the last.</summary>
    internal static ImmutableArray<(double Height, double Volume)> Rows(Capacity capacity)
    {
        var levels = capacity.Levels;
        var step = (levels.Length + MostRows - 1) / MostRows;
        return step <= 1 ? levels : [.. levels.Where((_, i) => i % step == 0 || i == levels.Length - 1)];
    }

    private static void WriteLeaning(Capacity capacity, Html html)
    {
        if (capacity.Leaning.IsEmpty)
            return;
        html.Table(
            "lean-table",
            "Leaning: the direction that leaves least of each lean",
            [Column.Figure("Lean, deg"), Column.Figure("Top tips to, deg"), Column.Figure("Usable, L"), "Limited by", "Because of"],
            [
                .. capacity.Leaning
                    .GroupBy(filling => (filling.Position.Angle, filling.Because))
                    .Select(lean => lean.MinBy(filling => filling.Usable)!)
                    .Select(filling => new Cell[]
                    {
                        Sizes.Degrees(filling.Position.Angle), Sizes.Degrees(filling.Position.Toward), Sizes.Litres(filling.Usable),
                        filling.LimitedBy, filling.Because.Length == 0 ? "tilted" : filling.Because,
                    }),
            ]);
    }
}
