using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Whether the vessel does its work: every figure, by chapters.</summary>
public static class FunctionFigures
{
    /// <summary>
    /// Chapters in the order of a report; those of which the design tells nothing are left out. Microseconds to milliseconds.
    /// </summary>
    public static ImmutableArray<FigureGroup> Of(Assembly assembly)
    {
        var design = assembly.Design;
        var path = assembly.Flow;
        FigureGroup?[] all =
        [
            path is null ? null : FlowFigures.Of(path, design.Flow),
            Separation.Of(path, design) is { } separation ? SeparationFigures.Of(separation, design) : null,
            CatchFigures.Of(assembly, path),
            Drain.Of(assembly, path) is { } drain ? DrainFigures.Of(drain) : null,
            MountFigures.Of(assembly),
            LeakFigures.Of(LeakTest.Of(assembly)),
        ];
        return [.. all.OfType<FigureGroup>().Select(group => group.Finite())];
    }
}
