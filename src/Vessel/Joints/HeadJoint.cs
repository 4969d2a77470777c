using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>
/// The girth weld of a head: a butt at a half sphere's equator; at a flat head a fillet where one part stands back from
/// the other by a leg or more, else a groove (inset, flush) or a corner (on the shell's end, edges in line).
/// </summary>
internal static class HeadJoint
{
    /// <summary>Edges closer to being in line than this share of a fillet's leg are welded as in line.</summary>
    private const double InLine = 0.5;

    public static Joint Of(PortHost end, VesselDesign vessel, WeldNumbers welds)
    {
        var (head, shell) = (vessel.Head(end), vessel.Shell);
        var wall = Math.Min(head.Wall, shell.Wall);
        var (kind, ring) = Ring(end, head, vessel, FilletThroat.Leg(wall));
        return new(
            welds[head.Path],
            $"{Names.Of(end)} to shell",
            [Names.Shell, Names.RimPart(end, vessel)],
            kind,
            Interval.Turn,
            [],
            ring,
            kind == JointKind.Fillet ? FilletThroat.Of(wall) : wall,
            wall,
            head.Path);
    }

    private static (JointKind Kind, Func<double, Station> Along) Ring(
        PortHost end, HeadDesign head, VesselDesign vessel, double leg)
    {
        var shell = vessel.Shell;
        var (up, level) = end == PortHost.Top ? (1, shell.Height) : (-1, 0.0);
        return head switch
        {
            FlatHead { Seat: Seat.Inset } lid when lid.Recess >= InLine * leg =>
                (JointKind.Fillet, Circle(shell.InnerRadius, level - (up * lid.Recess), Way.Axial(up), Way.Inward, lid.Clearance)),
            FlatHead { Seat: Seat.Inset } lid =>
                (JointKind.Groove, Circle(shell.InnerRadius, level - (up * lid.Recess), Way.Outward, Way.Inward, lid.Clearance)),
            FlatHead lid when lid.OutsideDiameter / 2 >= shell.OuterRadius + (InLine * leg) =>
                (JointKind.Fillet, Circle(shell.OuterRadius, level, Way.Axial(-up), Way.Outward, 0)),
            FlatHead lid when lid.OutsideDiameter / 2 <= shell.OuterRadius - (InLine * leg) =>
                (JointKind.Fillet, Circle(lid.OutsideDiameter / 2, level, Way.Outward, Way.Axial(up), 0)),
            FlatHead => (JointKind.Corner, Circle(shell.OuterRadius, level, Way.Axial(-up), Way.Axial(up), 0)),
            HemisphereHead => (JointKind.Butt, Circle(shell.OuterRadius, level, Way.Axial(-up), Way.Axial(up), 0)),
            _ => throw new ArgumentOutOfRangeException(nameof(head)),
        };
    }

    private static Func<double, Station> Circle(double radius, double z, Way host, Way part, double gap)
    {
        var dihedral = host.AngleTo(part);
        return angle =>
        {
            var (sin, cos) = Math.SinCos(angle);
            Vector3 Turned(Way way) => new(way.Radial * cos, way.Radial * sin, way.Along);
            return new(
                new(radius * cos, radius * sin, z),
                new(-radius * sin, radius * cos, 0),
                Turned(host),
                Turned(part),
                dihedral,
                gap,
                gap);
        };
    }

    /// <summary>A direction in the plane through the axis.</summary>
    private readonly record struct Way(double Radial, double Along)
    {
        public static Way Outward => new(1, 0);

        public static Way Inward => new(-1, 0);

        public static Way Axial(int sign) => new(0, sign);

        public double AngleTo(Way other) => Math.Acos((Radial * other.Radial) + (Along * other.Along));
    }
}
