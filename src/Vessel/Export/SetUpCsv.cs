using System.Collections.Immutable;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>setup.csv: measured positions for the bench, with a column to fill in.</summary>
internal static class SetUpCsv
{
    private static readonly ImmutableArray<string> _columns =
        ["what", "welds", "datum", "height_mm", "clock_deg", "arc_mm", "from_axis_mm", "depth_mm", "remark", "as_built"];

    public static void Write(Plan plan, Stream to) => Csv.Write(to, _columns, SetUp.Of(plan.Assembly).Select(Row));

    private static CsvCell[] Row(SetUp row) =>
        [row.What, string.Join(" ", row.Welds), row.Datum, row.Height, row.Clock, row.Arc, row.FromAxis, row.Depth, row.Remark, default];
}
