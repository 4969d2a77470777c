using Vessel.Design;
using Vessel.Joints;

namespace Vessel.Heads.FlatHeads;

/// <summary>
/// The weld round a flat head: a fillet where one part stands back from the other by a leg or more, else a groove (inset, flush) or a
/// corner (on the shell's end, edges in line).
/// </summary>
internal static class LidSeam
{
    /// <summary>Edges closer to being in line than this share of a fillet's leg are welded as in line.</summary>
    private const double InLine = 0.5;

    public static Joint Of(VesselEnd end, FlatHead lid, VesselDesign vessel)
    {
        var round = new HeadJoint(end, vessel);
        var (near, rim, outer) = (InLine * FilletThroat.Leg(round.Wall), lid.OutsideDiameter / 2, round.Shell.OuterRadius);
        if (lid.Seat == Seat.Inset)
            return Inset(round, lid, vessel.Shell.IsPlain ? null : vessel.Shell.CourseOf(end), lid.Recess >= near);
        return rim >= outer + near ? round.Of(JointKind.Fillet, LevelRing.Along(outer, round.Level, round.Host, Way.Outward, 0))
            : rim <= outer - near ? round.Of(JointKind.Fillet, LevelRing.Along(rim, round.Level, Way.Outward, Way.Axial(round.Up), 0))
            : round.InLine(JointKind.Corner);
    }

    /// <param name="leaning">The course that it stands in, where its bore may lean; null for one that does not.</param>
    private static Joint Inset(HeadJoint round, FlatHead lid, ShellCourse? leaning, bool standsBack)
    {
        var level = round.Level - (round.Up * lid.Recess);
        // What an inset plate leaves of a bore that leans, on its outer face.
        var bore = leaning?.InnerAt(level) ?? round.Shell.InnerRadius;
        var gap = leaning is null ? lid.Clearance : bore - (lid.OutsideDiameter / 2);
        // A bore that leans may leave more beside the plate's square edge than its clearance.
        var isOfCone = leaning is { IsCone: true } && gap > 2 * lid.Clearance;
        return round.Of(
            standsBack ? JointKind.Fillet : JointKind.Groove,
            LevelRing.Along(bore, level, standsBack ? round.Host.Back : Way.Outward, Way.Inward, gap)) with
        {
            GapKey = isOfCone ? $"{lid.Path}.thickness" : $"{lid.Path}.clearance",
            GapRemedy = isOfCone
                ? $"The cone alone leaves {NoteText.Length(gap - lid.Clearance)} mm of it beside the plate's square edge: chamfer that "
                    + "edge to the cone's slope, "
                    + "use a thinner plate, or set it on the shell's end (seat: overlay)"
                : null,
        };
    }
}
