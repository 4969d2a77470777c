using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

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

    public static Joint Of(PortHost end, VesselDesign vessel, WeldNumbers welds)
    {
        var (head, shell) = (vessel.Head(end), vessel.Shell);
        var wall = Math.Min(head.Wall, shell.Wall);
        var (kind, path) = Path(end, head, vessel, FilletThroat.Leg(wall));
        return new(
            welds[head.Path],
            $"{Names.Of(end)} to shell",
            [Names.Shell, .. Names.RimParts(end, vessel)],
            kind,
            Interval.Turn,
            [],
            path,
            kind == JointKind.Fillet ? FilletThroat.Of(wall) : wall,
            wall,
            head.Path)
        {
            Vee = head is ConeHead cone ? wall * wall * Math.Tan(cone.HalfAngle / 2) : 0,
        };
    }

    /// <summary>The root is told in the middle of the weld's face.</summary>
    private static (JointKind Kind, Func<double, Station> Along) Cone(
        PortHost end, ConeHead cone, VesselDesign vessel, int up, double level)
    {
        var edge = HeadShape.Of(end, vessel)!.Outer.End;
        var (sin, cos) = Math.SinCos(cone.HalfAngle);
        return (JointKind.Corner, Ring.Along(
            (vessel.Shell.OuterRadius + edge.U) / 2, level - (up * edge.V / 2), Way.Axial(-up), new(-sin, up * cos), 0,
            Math.PI + cone.HalfAngle));
    }

    private static (JointKind Kind, Func<double, Station> Along) Path(
        PortHost end, HeadDesign head, VesselDesign vessel, double leg)
    {
        var shell = vessel.Shell;
        var (up, level) = end == PortHost.Top ? (1, shell.Height) : (-1, 0.0);
        return head switch
        {
            FlatHead { Seat: Seat.Inset } lid when lid.Recess >= InLine * leg =>
                (JointKind.Fillet, Ring.Along(shell.InnerRadius, level - (up * lid.Recess), Way.Axial(up), Way.Inward, lid.Clearance)),
            FlatHead { Seat: Seat.Inset } lid =>
                (JointKind.Groove, Ring.Along(shell.InnerRadius, level - (up * lid.Recess), Way.Outward, Way.Inward, lid.Clearance)),
            FlatHead lid when lid.OutsideDiameter / 2 >= shell.OuterRadius + (InLine * leg) =>
                (JointKind.Fillet, Ring.Along(shell.OuterRadius, level, Way.Axial(-up), Way.Outward, 0)),
            FlatHead lid when lid.OutsideDiameter / 2 <= shell.OuterRadius - (InLine * leg) =>
                (JointKind.Fillet, Ring.Along(lid.OutsideDiameter / 2, level, Way.Outward, Way.Axial(up), 0)),
            FlatHead => (JointKind.Corner, Ring.Along(shell.OuterRadius, level, Way.Axial(-up), Way.Axial(up), 0)),
            ConeHead cone => Cone(end, cone, vessel, up, level),
            DishedHead => (JointKind.Butt, Ring.Along(shell.OuterRadius, level, Way.Axial(-up), Way.Axial(up), 0)),
            _ => throw new ArgumentOutOfRangeException(nameof(head)),
        };
    }
}
