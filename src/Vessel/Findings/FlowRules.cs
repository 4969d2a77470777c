using Vessel.Function;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Whether the gas gets through, and through the media.</summary>
internal static class FlowRules
{
    private const double PascalsPerMillibar = 100;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        if (assembly.Flow is not { } path)
            yield break;
        var design = assembly.Design;
        foreach (var stage in path.Stages)
        {
            yield return new(
                FindingCodes.StageBelowInlet,
                Severity.Warning,
                [],
                () => $"'{stage.Name}' leaves {FigureText.Of(stage.Area)} mm2 open, less than the {FigureText.Of(path.InletArea)} mm2 of "
                + $"'{path.Inlet}': the gas speeds up there, tears {design.Flow.Liquid.Word} off and loses pressure; widen it.",
                [new("open area", stage.Area, AtLeast(path.InletArea), "mm2")],
                design.PlaceOf(stage.Path),
                // The inlet is its own limit.
                stage.Area == path.InletArea ? null : $"open area of '{stage.Name}'");
        }

        if (path.PastMedia)
        {
            yield return new(
                FindingCodes.MediaBypassed,
                Severity.Warning,
                [],
                () => $"gas can go from '{path.Inlet}' to '{path.Vent}' past the packing: most of it will, as that way is the freer one; "
                    + "close it.",
                [],
                design.PlaceOf("inside"));
        }

        if (path.Loss is { IsFinite: true } loss)
        {
            yield return new(
                FindingCodes.LossTooGreat,
                Severity.Warning,
                [],
                () => $"from {path.From} to '{path.Vent}' the gas loses about {FigureText.Of(loss.Likely / PascalsPerMillibar)} mbar "
                + $"({FigureText.Of(loss.Low / PascalsPerMillibar)} to {FigureText.Of(loss.High / PascalsPerMillibar)}), more than the "
                + $"{FigureText.Of(design.Flow.MostLoss / PascalsPerMillibar)} allowed; most of it in {Greatest(path)}.",
                [new("loss", loss.Likely / PascalsPerMillibar, AtMost(design.Flow.MostLoss / PascalsPerMillibar), "mbar")],
                design.PlaceOf("flow"),
                $"pressure lost from {path.From} to '{path.Vent}'");
        }
    }

    private static string Greatest(FlowPath path) =>
        path.Stages[path.Losses(path.Gas.Flow!.Value).Select((loss, i) => (loss.Likely, -i)).Max().Item2 * -1].Name;
}
