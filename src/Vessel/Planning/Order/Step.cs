using System.Collections.Immutable;
using Vessel.Function;

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
/// <param name="Number">Number, counted from 1.</param>
/// <param name="What">For the bench.</param>
public sealed record Step(int Number, StepKind Kind, WorkTask Task, string What)
{
    /// <summary>The tasks in their order, each weld as fit, tack, weld, cool, check; what is tacked together once for all of it.</summary>
    internal static ImmutableArray<Step> Of(
        WorkOrder order, Assembly assembly, ImmutableArray<WeldProcedure> welds, Purge purge)
    {
        var text = new StepText(assembly, purge);
        var tacked = order.Tasks.SelectMany(task => task.Tacked).Select(joint => joint.Number).ToHashSet();
        var procedures = welds.ToDictionary(weld => weld.Joint.Number);
        return
        [
            .. order.Tasks
                .SelectMany(task => Lines(task).Select(line => (line.Kind, task, line.What)))
                .Select((line, i) => new Step(i + 1, line.Kind, line.task, line.What)),
        ];

        IEnumerable<(StepKind Kind, string What)> Lines(WorkTask task) =>
            task.Weld is { } weld ? text.OfWeld(procedures[weld.Number], tacked.Contains(weld.Number))
            : !task.Tacked.IsEmpty ? text.OfTacks([.. task.Tacked.Select(joint => procedures[joint.Number])])
            : [(KindOf(task.Kind), task.What)];
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
