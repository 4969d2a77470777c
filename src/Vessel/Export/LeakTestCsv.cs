using System.Collections.Immutable;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>leak-test.csv: what shuts each port, and every place where bubbles are looked for, with a column to fill in.</summary>
internal static class LeakTestCsv
{
    private static readonly ImmutableArray<string> _columns = ["do", "where", "what", "as_built"];

    public static void Write(LeakKit kit, Stream to) => Csv.Write(
        to,
        _columns,
        [
            .. kit.Blanks.Select(blank => (CsvCell[])["shut", blank.Port, blank.Blank, default]),
            .. kit.Points.Select(point => (CsvCell[])["look", point.Where, point.What, default]),
        ]);
}
