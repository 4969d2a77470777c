using System.Collections.Immutable;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>steps.csv: the day's work, a row a step, in an order that can be kept.</summary>
internal static class StepsCsv
{
    private static readonly ImmutableArray<string> _columns = ["step", "do", "weld", "parts", "what"];

    public static void Write(Plan plan, Stream to) => Csv.Write(to, _columns, plan.Steps.Select(Row));

    private static CsvCell[] Row(Step step) =>
    [
        step.Number, step.Kind.ToString().ToLowerInvariant(), step.Task.Weld?.Joint.Number, string.Join(" ", step.Task.Parts), step.What,
    ];
}
