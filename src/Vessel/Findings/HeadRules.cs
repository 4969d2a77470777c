using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>How the heads meet the shell.</summary>
internal static class HeadRules
{
    /// <summary>Walls may differ by this share before the step is worth a word. Common practice, no source.</summary>
    private const double StepShare = 0.25;

    /// <summary>Between two long seams that end at one girth, mm. Common practice, no source.</summary>
    internal const double SeamsApart = 10;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var (end, head) in new[] { (PortHost.Top, design.Top), (PortHost.Bottom, design.Bottom) })
        {
            var isRolled = design.Shell.CourseOf(end).IsRolled;
            if (head is DishedHead dish)
                yield return Step(end, dish, design);
            if (head is ConeHead cone && isRolled)
                yield return Crossing(end, cone, design);
            if (head is FlatHead lid && LedgeOf(end, lid, design) is > 0 and var ledge)
                yield return Ledge(end, lid, ledge, design);
            if (head is FlatHead { Seat: Seat.Inset } && isRolled)
                yield return Bead(end, head, design);
        }
    }

    private static Measure Crossing(PortHost end, ConeHead cone, VesselDesign design)
    {
        var shell = design.Shell.AtEnd(end);
        var apart = shell.OuterRadius * cone.Seams.Apart(shell.Seams);
        var name = cone.Segments == 1 ? "the seam" : "a seam";
        var remedy = cone.Segments == 1 && shell.Seams.Count == 1
            ? $"'seam_angle: {NoteText.Degrees(shell.Seams.Between(1))}' lies opposite"
            : $"'seam_angle: {NoteText.Degrees(shell.Seams.Between(cone.Segments) % cone.Pitch)}' keeps clear of it";
        return new(
                FindingCodes.SeamsMeet,
                Severity.Warning,
                [.. Names.ShellParts(end, design), .. Names.RimParts(end, design)],
                () => $"{name} of the {Names.Of(end)} cone reaches the round seam {NoteText.Length(apart)} mm from {(shell.Seams.Count > 1 ? "a long seam of the shell" : "the shell's long seam")}, nearer than "
                + $"{NoteText.Length(SeamsApart)} mm: turn the cone, {remedy}.",
                [new("apart", apart, AtLeast(SeamsApart), "mm")],
                design.PlaceOf($"{cone.Path}.seam_angle"),
                $"between the long seams of shell and {Names.Of(end)} cone");
    }

    private static Measure Step(PortHost end, DishedHead dome, VesselDesign design)
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

    private static Measure Bead(PortHost end, HeadDesign head, VesselDesign design) => new(
        FindingCodes.BeadUnderLid,
        Severity.Note,
        [.. Names.ShellParts(end, design), Names.Of(end)],
        () => $"{Names.Of(end)} sits inside the shell and meets the bead of {Seams(design.Shell.AtEnd(end).Seams)}: "
        + "dress it flush over the plate's depth, or file a notch in the plate.",
        [],
        design.PlaceOf($"{head.Path}.seat"));

    /// <summary>Where they lie.</summary>
    internal static string Seams(SheetSeams seams) => seams.Count == 1
        ? $"the long seam at {NoteText.Degrees(seams.First)} deg"
        : $"each long seam, at {string.Join(", ", seams.Angles.Select(angle => NoteText.Degrees(Turns.From(angle, 0))))} deg";

    /// <summary>How far a lid stands back from the shell's end, or out over it, mm.</summary>
    private static double LedgeOf(PortHost end, FlatHead lid, VesselDesign design) =>
        lid.Seat == Seat.Inset ? lid.Recess : Math.Abs((lid.OutsideDiameter / 2) - design.Shell.AtEnd(end).OuterRadius);

    private static Measure Ledge(PortHost end, FlatHead lid, double ledge, VesselDesign design)
    {
        var leg = FilletThroat.Leg(Math.Min(lid.Wall, design.Shell.Wall));
        var key = lid.Seat == Seat.Inset ? "recess" : "outside_diameter";
        return new(
            FindingCodes.LedgeTooNarrow,
            Severity.Warning,
            [Names.Of(end)],
            () => $"{Names.Of(end)} leaves a ledge of {NoteText.Length(ledge)} mm where its fillet takes a leg of {NoteText.Length(leg)} mm: "
            + "make the ledge zero, or at least the leg.",
            [new("ledge", ledge, AtLeast(leg), "mm")],
            design.PlaceOf($"{lid.Path}.{key}"),
            $"ledge of the {Names.Of(end)}");
    }
}
