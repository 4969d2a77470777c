using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Export.Report.Sections;

/// <summary>Where everything stands, measured from what can be touched, with a column to fill in by pencil.</summary>
internal static class SetUpSection
{
    public static ReportSection Section { get; } = new("set-up", "Measured positions", Write)
    {
        AppliesTo = report => !SetUpTable.Of(report.Build.Assembly).IsEmpty,
    };

    private static void Write(ReportContext report, Html html)
    {
        var (sizes, unit) = (report.Sizes, report.Sizes.Unit);
        string? Told(double? length) => length is { } mm ? sizes.Length(mm) : null;
        ImmutableArray<SetUp> rows = SetUpTable.Of(report.Build.Assembly);
        html.Table(
            "set-up-table",
            $"Lengths in {unit}; the clock runs counter-clockwise from the front, seen from above",
            [
                "What", "Welds", "Measured from", Column.Figure("Height"), Column.Figure("Clock, deg"), Column.Figure("Round the outside"),
                Column.Figure("From the axis"), Column.Figure("Depth"), "Remark", "As built",
            ],
            [
                .. rows.Select(row => new Cell[]
                {
                    row.What, string.Join(", ", row.Welds), row.Datum, sizes.Length(row.Height),
                    row.Clock is { } clock ? Sizes.Text(clock, 1) : null,
                    Told(row.Arc), Told(row.FromAxis), Told(row.Depth), row.Remark, string.Empty,
                }),
            ]);
        if (report.Build.Fixtures.IsEmpty)
            return;
        html.Tag("ul", () =>
        {
            foreach (var fixture in report.Build.Fixtures)
                html.Tag("li", $"{fixture.Site.Port.Name}: {fixture.Remark}");
        });
    }
}
