using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>How the heads meet the shell.</summary>
internal static class HeadRules
{
    /// <summary>Walls may differ by this share before the step is worth a word. Common practice, no source.</summary>
    private const double StepShare = 0.25;

    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var (end, head) in new[] { (PortHost.Top, design.Top), (PortHost.Bottom, design.Bottom) })
        {
            var finding = head switch
            {
                HemisphereHead dome => Step(end, dome, design),
                FlatHead lid => Ledge(end, lid, design),
                _ => null,
            };
            if (finding is not null)
                yield return finding;
        }
    }

    private static Finding? Step(PortHost end, HemisphereHead dome, VesselDesign design)
    {
        var (step, limit) = (Math.Abs(dome.Wall - design.Shell.Wall), StepShare * Math.Min(dome.Wall, design.Shell.Wall));
        if (step <= limit)
            return null;
        return new(
            FindingCodes.StepAtSeam,
            Severity.Warning,
            [Names.Shell, Names.RimPart(end, design)],
            $"the walls of shell and {Names.Of(end)} differ by {NoteText.Length(step)} mm, which leaves a step inside that holds "
            + "oil and takes heat unevenly: choose equal walls, or bevel the thicker one inside.",
            [new("step", step, limit, "mm")],
            design.PlaceOf($"{dome.Path}.wall"));
    }

    private static Finding? Ledge(PortHost end, FlatHead lid, VesselDesign design)
    {
        var leg = FilletThroat.Leg(Math.Min(lid.Wall, design.Shell.Wall));
        var ledge = lid.Seat == Seat.Inset ? lid.Recess : Math.Abs((lid.OutsideDiameter / 2) - design.Shell.OuterRadius);
        if (ledge == 0 || ledge >= leg)
            return null;
        var key = lid.Seat == Seat.Inset ? "recess" : "outside_diameter";
        return new(
            FindingCodes.LedgeTooNarrow,
            Severity.Warning,
            [Names.Of(end)],
            $"{Names.Of(end)} leaves a ledge of {NoteText.Length(ledge)} mm where its fillet takes a leg of {NoteText.Length(leg)} mm: "
            + "make the ledge zero, or at least the leg.",
            [new("ledge", ledge, leg, "mm")],
            design.PlaceOf($"{lid.Path}.{key}"));
    }
}
