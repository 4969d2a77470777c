using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>The butt welds round a shell where a cylinder meets a cone, both cut level, on the outside.</summary>
internal static class GirthSeam
{
    /// <summary>The weld between a course and the one below it; null for the lowest.</summary>
    public static Joint? Below(ShellCourse course, VesselDesign vessel)
    {
        var courses = vessel.Shell.Courses;
        return courses.IndexOf(course) is > 0 and var i ? Of(courses[i - 1], course, vessel, vessel.Shell.Reducer!.GirthPaths[i - 1])
            : null;
    }

    private static Joint Of(ShellCourse below, ShellCourse above, VesselDesign vessel, string path)
    {
        var (host, part) = (Way.To(below.Outer.A - below.Outer.B), Way.To(above.Outer.B - above.Outer.A));
        return new(
            $"{above.Name} to {below.Name}",
            Joint.Sides(Names.ShellParts(below, vessel), Names.ShellParts(above, vessel)),
            JointKind.Butt,
            Interval.Turn,
            [],
            LevelRing.Along(above.Low, above.Start, host, part, 0, host.AirTo(part, 1)),
            above.Wall,
            above.Wall,
            path)
        {
            Role = WeldRole.GirthSeam,
            Owner = vessel.Shell.Reducer!.Path,
            HeldOpen = Bevel.UsualGap(above.Wall),
        };
    }
}
