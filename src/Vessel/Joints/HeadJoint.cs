using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>The girth weld between a head and the shell, which kinds of head build theirs with.</summary>
internal sealed class HeadJoint
{
    private readonly VesselEnd _end;

    private readonly VesselDesign _vessel;

    public HeadJoint(VesselEnd end, VesselDesign vessel)
    {
        (_end, _vessel) = (end, vessel);
        (Up, Level, Shell) = end == VesselEnd.Top ? (1, vessel.Shell.Height, vessel.Shell.AtEnd(end)) : (-1, 0, vessel.Shell.AtEnd(end));
        var course = vessel.Shell.CourseOf(end);
        Host = course.IsCone ? Way.To(Up > 0 ? course.Outer.A - course.Outer.B : course.Outer.B - course.Outer.A) : Way.Axial(-Up);
    }

    /// <summary>+1 at the top, -1 at the bottom: the way out.</summary>
    public int Up { get; }

    /// <summary>Height of the shell's end, mm.</summary>
    public double Level { get; }

    /// <summary>The shell there.</summary>
    public ShellSection Shell { get; }

    /// <summary>Way from the shell's end along its outside.</summary>
    public Way Host { get; }

    /// <summary>The thinner of the two walls, mm.</summary>
    public double Wall => Math.Min(_vessel.Head(_end).Wall, _vessel.Shell.Wall);

    /// <summary>A weld all round.</summary>
    public Joint Of(JointKind kind, Func<double, Station> along) => new(
        $"{Names.Of(_end)} to shell",
        Joint.Sides(Names.ShellParts(_end, _vessel), Names.RimParts(_end, _vessel)),
        kind,
        Geometry.Interval.Turn,
        [],
        along,
        kind == JointKind.Fillet ? FilletThroat.Of(Wall) : Wall,
        Wall,
        _vessel.Head(_end).Path)
    {
        Role = WeldRole.HeadSeam,
        Owner = _vessel.Head(_end).Path,
        HeldOpen = kind == JointKind.Butt ? Bevel.UsualGap(Wall) : 0,
    };

    /// <summary>One whose part goes on from the shell's outside, at a radius: mm.</summary>
    public Joint InLine(JointKind kind) =>
        Of(kind, LevelRing.Along(Shell.OuterRadius, Level, Host, Way.Axial(Up), 0, Host.AirTo(Way.Axial(Up), Up)));
}
