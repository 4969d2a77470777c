using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt weld up a rolled tube or cone, on its outside.</summary>
internal static class LongSeam
{
    public static Joint Of(ShellCourse course, WeldNumbers welds) => Along(
        welds[course.SeamPath], $"long seam of {course.Name}", course.Id, course.Outer, course.SeamAngle, course.RootGap, course.Wall, course.SeamPath);

    /// <param name="line">Of the outside, upward, in the vessel's frame.</param>
    public static Joint Along(
        string number, string name, string part, LinePiece line, double angle, double gap, double wall, string path)
    {
        var (sin, cos) = Math.SinCos(angle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var (rise, foot) = (line.B.V - line.A.V, line.A.V);
        Vector3 At(Point2 place) => (place.U * outward) + (place.V * Vector3.UnitZ);
        var along = (1 / rise) * At(line.B - line.A);
        return new(
            number,
            name,
            [part, part],
            JointKind.Butt,
            new(foot, line.B.V),
            [],
            z => new(At(line.A) + ((z - foot) * along), along, -sideways, sideways, Math.PI, gap, gap),
            wall,
            wall,
            path);
    }
}
