using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt welds round a shell where a cylinder meets a cone, both cut level, on the outside.</summary>
internal static class GirthSeam
{
    public static IEnumerable<Joint> Of(ShellDesign shell, WeldNumbers welds) =>
        (shell.Reducer?.GirthPaths ?? []).Select((path, i) => Of(shell.Courses[i], shell.Courses[i + 1], path, welds));

    private static Joint Of(ShellCourse below, ShellCourse above, string path, WeldNumbers welds)
    {
        var (host, part) = (Way.To(below.Outer.A - below.Outer.B), Way.To(above.Outer.B - above.Outer.A));
        return new(
            welds[path],
            $"{above.Name} to {below.Name}",
            [below.Id, above.Id],
            JointKind.Butt,
            Interval.Turn,
            [],
            Ring.Along(above.Low, above.Start, host, part, 0, host.AirTo(part, 1)),
            above.Wall,
            above.Wall,
            path);
    }
}
