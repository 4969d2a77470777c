using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>setup.csv: measured positions for the bench, with a column to fill in.</summary>
internal static class SetUpCsv
{
    private static readonly ImmutableArray<string> _columns =
        ["item", "welds", "datum", "height_mm", "clock_deg", "arc_mm", "from_axis_mm", "depth_mm", "remark", "fixture", "as_built"];

    public static void Write(Build build, Stream to)
    {
        var fixtures = build.Fixtures.ToDictionary(fixture => fixture.Site.Port.Name, fixture => fixture.Remark);
        Csv.Write(to, _columns, SetUpTable.Of(build.Assembly).Select(row => Row(row, fixtures.GetValueOrDefault(row.What))));
    }

    private static CsvCell[] Row(SetUp row, string? fixture) =>
        [row.What, string.Join(" ", row.Welds), row.Datum, row.Height, row.Clock, row.Arc, row.FromAxis, row.Depth, row.Remark, fixture,
            default];
}
