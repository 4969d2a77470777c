using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>times.csv: each operation with its basis, by hand and by laser side by side, and the totals.</summary>
internal static class TimesCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "task", "step", "operation", "quantity", "hand_low_min", "hand_likely_min", "hand_high_min", "laser_low_min",
        "laser_likely_min", "laser_high_min", "basis",
    ];

    public static void Write(Timing timing, Stream to) => Csv.Write(
        to,
        _columns,
        [
            .. timing.Items.Select(item => Row(
                item.Task, item.Step.ToString().ToLowerInvariant(), item.Operation, item.Quantity, item.Hand, item.Laser, item.Basis)),
            Row("total", null, null, null, timing.Hand, timing.Laser, timing.Hand.Basis),
        ]);

    internal static IEnumerable<CsvCell> Minutes(Estimate? time) => time is { } minutes
        ? [Rounded(minutes.Low), Rounded(minutes.Likely), Rounded(minutes.High)]
        : [default, default, default];

    private static CsvCell Rounded(double minutes) => Math.Round(minutes, 2);

    private static CsvCell[] Row(
        string task, string? step, string? operation, double? quantity, Estimate? hand, Estimate? laser, string basis) =>
        [task, step, operation, quantity, .. Minutes(hand), .. Minutes(laser), basis];
}
