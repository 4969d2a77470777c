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

    /// <summary>Low, likely, high, to a hundredth; empty cells for none.</summary>
    internal static IEnumerable<CsvCell> Rounded(Estimate? estimate) => estimate is { } e
        ? new[] { e.Low, e.Likely, e.High }.Select(value => (CsvCell)Math.Round(value, 2))
        : [default, default, default];

    private static CsvCell[] Row(
        string task, string? step, string? operation, double? quantity, Estimate? hand, Estimate? laser, string basis) =>
        [task, step, operation, quantity, .. Rounded(hand), .. Rounded(laser), basis];
}
