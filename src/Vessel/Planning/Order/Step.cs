using System.Collections.Immutable;

namespace Vessel.Planning;

/// <summary>What is done in one step.</summary>
public enum StepKind
{
    Make,
    Fit,
    Tack,
    Weld,
    Cool,
    Check,
    Round,
    Plug,
    Chase,
    Dress,
    Clean,
    Test,
    Finish,
}

/// <summary>One line of the day's list.</summary>
/// <param name="Number">From 1.</param>
/// <param name="What">For the bench.</param>
public sealed record Step(int Number, StepKind Kind, WorkTask Task, string What)
{
    /// <summary>The tasks in their order, each weld as fit, tack, weld, cool, check.</summary>
    internal static ImmutableArray<Step> Of(
        WorkOrder order, Assembly assembly, ImmutableArray<WeldProcedure> welds, Purge purge)
    {
        var text = new StepText(assembly, purge);
        var procedures = welds.ToDictionary(weld => weld.Joint.Number);
        return
        [
            .. order.Tasks
                .SelectMany(task => task.Weld is { } weld
                    ? text.OfWeld(procedures[weld.Joint.Number]).Select(line => (line.Kind, task, line.What))
                    : [(KindOf(task.Kind), task, task.What)])
                .Select((line, i) => new Step(i + 1, line.Item1, line.task, line.What)),
        ];
    }

    private static StepKind KindOf(WorkKind kind) => kind switch
    {
        WorkKind.Make => StepKind.Make,
        WorkKind.Round => StepKind.Round,
        WorkKind.Fit => StepKind.Fit,
        WorkKind.Plug => StepKind.Plug,
        WorkKind.Chase => StepKind.Chase,
        WorkKind.Dress => StepKind.Dress,
        WorkKind.Clean => StepKind.Clean,
        WorkKind.Test => StepKind.Test,
        WorkKind.Finish => StepKind.Finish,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
