using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>
/// The girth weld of a head: a butt at a dish's rim; at a flat head a fillet where one part stands back from the other by a leg
/// or more, else a groove (inset, flush) or a corner (on the shell's end, edges in line); at a cone a corner whose square edges
/// touch inside and open outward.
/// </summary>
internal static class HeadJoint
{
    /// <summary>Edges closer to being in line than this share of a fillet's leg are welded as in line.</summary>
    private const double InLine = 0.5;

    public static Joint Of(PortHost end, VesselDesign vessel)
    {
        var (head, shell) = (vessel.Head(end), vessel.Shell);
        var wall = Math.Min(head.Wall, shell.Wall);
        var (kind, path) = Path(end, head, vessel, FilletThroat.Leg(wall));
        return new(
            $"{Names.Of(end)} to shell",
            Joint.Sides(Names.ShellParts(end, vessel), Names.RimParts(end, vessel)),
            kind,
            Interval.Turn,
            [],
            path,
            kind == JointKind.Fillet ? FilletThroat.Of(wall) : wall,
            wall,
            head.Path)
        {
            Role = WeldRole.HeadSeam,
            Owner = head.Path,
            GapKey = head is FlatHead { Seat: Seat.Inset } ? $"{head.Path}.clearance" : null,
            HeldOpen = kind == JointKind.Butt ? Bevel.UsualGap(wall) : 0,
            Vee = head is ConeHead cone ? wall * wall * Math.Tan(cone.HalfAngle / 2) : 0,
        };
    }

    /// <summary>The root is told in the middle of the weld's face.</summary>
    private static (JointKind Kind, Func<double, Station> Along) Cone(
        PortHost end, ConeHead cone, VesselDesign vessel, int up, double level)
    {
        var edge = HeadShape.Of(end, vessel)!.Outer.End;
        var (sin, cos) = Math.SinCos(cone.HalfAngle);
        var (host, part) = (Inward(end, vessel, up), new Way(-sin, up * cos));
        return (JointKind.Corner, LevelRing.Along(
            (vessel.Shell.AtEnd(end).OuterRadius + edge.U) / 2, level - (up * edge.V / 2), host, part, 0, host.AirTo(part, up)));
    }

    private static (JointKind Kind, Func<double, Station> Along) Path(
        PortHost end, HeadDesign head, VesselDesign vessel, double leg)
    {
        var (up, level) = end == PortHost.Top ? (1, vessel.Shell.Height) : (-1, 0.0);
        var (shell, host) = (vessel.Shell.AtEnd(end), Inward(end, vessel, up));
        var air = host.AirTo(Way.Axial(up), up);
        // What an inset plate leaves of a bore that leans, on its outer face.
        (double Bore, double Gap) Inset(FlatHead lid) => vessel.Shell.IsPlain ? (shell.InnerRadius, lid.Clearance)
            : vessel.Shell.CourseOf(end).InnerAt(level - (up * lid.Recess)) is var bore ? (bore, bore - (lid.OutsideDiameter / 2))
            : default;
        return head switch
        {
            FlatHead { Seat: Seat.Inset } lid when lid.Recess >= InLine * leg =>
                (JointKind.Fillet, LevelRing.Along(Inset(lid).Bore, level - (up * lid.Recess), host.Back, Way.Inward, Inset(lid).Gap)),
            FlatHead { Seat: Seat.Inset } lid =>
                (JointKind.Groove, LevelRing.Along(Inset(lid).Bore, level - (up * lid.Recess), Way.Outward, Way.Inward, Inset(lid).Gap)),
            FlatHead lid when lid.OutsideDiameter / 2 >= shell.OuterRadius + (InLine * leg) =>
                (JointKind.Fillet, LevelRing.Along(shell.OuterRadius, level, host, Way.Outward, 0)),
            FlatHead lid when lid.OutsideDiameter / 2 <= shell.OuterRadius - (InLine * leg) =>
                (JointKind.Fillet, LevelRing.Along(lid.OutsideDiameter / 2, level, Way.Outward, Way.Axial(up), 0)),
            FlatHead => (JointKind.Corner, LevelRing.Along(shell.OuterRadius, level, host, Way.Axial(up), 0, air)),
            ConeHead cone => Cone(end, cone, vessel, up, level),
            DishedHead => (JointKind.Butt, LevelRing.Along(shell.OuterRadius, level, host, Way.Axial(up), 0, air)),
            _ => throw new ArgumentOutOfRangeException(nameof(head)),
        };
    }

    /// <summary>From the shell's end along its outside.</summary>
    private static Way Inward(PortHost end, VesselDesign vessel, int up)
    {
        var course = vessel.Shell.CourseOf(end);
        return course.IsCone ? Way.To(up > 0 ? course.Outer.A - course.Outer.B : course.Outer.B - course.Outer.A) : Way.Axial(-up);
    }
}
