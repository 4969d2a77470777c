using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Heads.FlatHeads;

/// <summary>How a flat head meets the shell.</summary>
internal static class LidRules
{
    public static IEnumerable<Measure> Of(VesselEnd end, FlatHead lid, VesselDesign design)
    {
        if (LedgeOf(end, lid, design) is > 0 and var ledge)
            yield return Ledge(end, lid, ledge, design);
        if (lid.Seat == Seat.Inset && design.Shell.CourseOf(end).IsRolled)
            yield return Bead(end, lid, design);
    }

    private static Measure Bead(VesselEnd end, FlatHead head, VesselDesign design) => new(
        FindingCodes.BeadUnderLid,
        Severity.Note,
        [.. Names.ShellParts(end, design), Names.Of(end)],
        () => $"{Names.Of(end)} sits inside the shell and meets the bead of {Seams(design.Shell.AtEnd(end).Seams)}: "
        + "dress it flush over the plate's depth, or file a notch in the plate.",
        [],
        design.PlaceOf($"{head.Path}.seat"));

    /// <summary>Where they lie.</summary>
    private static string Seams(SheetSeams seams) => seams.Count == 1
        ? $"the long seam at {NoteText.Degrees(seams.First)} deg"
        : $"each long seam, at {string.Join(", ", seams.Angles.Select(angle => NoteText.Degrees(Turns.From(angle, 0))))} deg";

    /// <summary>How far a lid stands back from the shell's end, or out over it, mm.</summary>
    private static double LedgeOf(VesselEnd end, FlatHead lid, VesselDesign design) =>
        lid.Seat == Seat.Inset ? lid.Recess : Math.Abs((lid.OutsideDiameter / 2) - design.Shell.AtEnd(end).OuterRadius);

    private static Measure Ledge(VesselEnd end, FlatHead lid, double ledge, VesselDesign design)
    {
        var leg = FilletThroat.Leg(Math.Min(lid.Wall, design.Shell.Wall));
        var key = lid.Seat == Seat.Inset ? "recess" : "outside_diameter";
        return new(
            FindingCodes.LedgeTooNarrow,
            Severity.Warning,
            [Names.Of(end)],
            () => $"{Names.Of(end)} leaves a ledge of {NoteText.Length(ledge)} mm where its fillet takes a leg of {NoteText.Length(leg)} "
            + "mm: "
            + "make the ledge zero, or at least the leg.",
            [new("ledge", ledge, AtLeast(leg), "mm")],
            design.PlaceOf($"{lid.Path}.{key}"),
            $"ledge of the {Names.Of(end)}");
    }
}
