using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>The butt welds round a shell where a cylinder meets a cone, both cut level, on the outside.</summary>
internal static class GirthSeam
{
    public static IEnumerable<Joint> Of(VesselDesign vessel) =>
        (vessel.Shell.Reducer?.GirthPaths ?? [])
            .Select((path, i) => Of(vessel.Shell.Courses[i], vessel.Shell.Courses[i + 1], vessel, path));

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
