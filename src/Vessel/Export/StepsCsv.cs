using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>steps.csv: the day's work, a row a step, in an order that can be kept.</summary>
internal static class StepsCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "step", "task", "weld", "parts", "work", "hand_low_min", "hand_likely_min", "hand_high_min", "laser_low_min",
        "laser_likely_min", "laser_high_min",
    ];

    public static void Write(Plan plan, Stream to) => Csv.Write(to, _columns, plan.Steps.Select(step => Row(step, plan.Timing.Of(step))));

    private static CsvCell[] Row(Step step, (Estimate Hand, Estimate Laser) time) =>
    [
        step.Number, step.Kind.ToString().ToLowerInvariant(), step.Task.Welds, string.Join(" ", step.Task.Parts), step.What,
        .. TimesCsv.Rounded(time.Hand), .. TimesCsv.Rounded(time.Laser),
    ];
}
