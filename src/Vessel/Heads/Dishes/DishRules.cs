using Vessel.Design;
using Vessel.Findings;
using Vessel.Parts;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Heads.Dishes;

/// <summary>How a dished head meets the shell, and whether its sheet can be formed.</summary>
internal static class DishRules
{
    /// <summary>Walls may differ by this share before the step is worth a word. Common practice, no source.</summary>
    private const double StepShare = 0.25;

    public static Measure Step(VesselEnd end, DishedHead dome, VesselDesign design)
    {
        var (step, limit) = (Math.Abs(dome.Wall - design.Shell.Wall), StepShare * Math.Min(dome.Wall, design.Shell.Wall));
        return new(
            FindingCodes.StepAtSeam,
            Severity.Warning,
            [.. Names.ShellParts(end, design), Names.RimPart(end, design)],
            () => $"the walls of shell and {Names.Of(end)} differ by {NoteText.Length(step)} mm, which leaves a step inside that holds "
            + "oil and takes heat unevenly: choose equal walls, or bevel the thicker one inside.",
            [new("step", step, AtMost(limit), "mm")],
            design.PlaceOf($"{dome.Path}.wall"),
            $"step from the shell to the {Names.Of(end)}");
    }

    /// <summary>Sheet that is sold too hard to be spun or dished; none where it is soft enough.</summary>
    /// <param name="work">What is done to it: <c>spinning</c>.</param>
    /// <param name="parts">Ids of what is made of it.</param>
    public static IEnumerable<Measure> Temper(VesselEnd end, DishedHead dome, string work, string[] parts, VesselDesign design)
    {
        if (!Ductility.IsHard(dome.Material))
            yield break;
        yield return new(
            FindingCodes.TemperTooHard,
            Severity.Warning,
            [.. parts],
            () => $"{dome.Material.Name} is too hard for {work} the {Names.Of(end)}: it "
            + "springs back and tears; use annealed sheet (temper O), or anneal it first.",
            [],
            design.PlaceOf($"{dome.Path}.material"));
    }
}
