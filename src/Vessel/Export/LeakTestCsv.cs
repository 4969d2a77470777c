using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>leak-test.csv: what shuts each port, and every place where leaks are looked for, with a column to fill in.</summary>
internal static class LeakTestCsv
{
    private static readonly ImmutableArray<string> _columns = ["task", "place", "detail", "as_built"];

    public static void Write(LeakKit kit, Stream to) => Csv.Write(
        to,
        _columns,
        [
            ["test", "whole vessel", LeakWords.Named(kit.Test), default],
            .. kit.Blanks.Select(blank => (CsvCell[])["shut", blank.Port, blank.Blank, default]),
            .. kit.Points.Select(point => (CsvCell[])["look", point.Where, point.What, default]),
        ]);
}
