using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt welds up a rolled tube or cone, on its outside: one, or one between two sheets each.</summary>
internal static class LongSeam
{
    /// <summary>None of a tube.</summary>
    public static IEnumerable<Joint> Of(ShellCourse course, VesselDesign vessel)
    {
        var ids = SheetPiece.Ids(SheetPiece.Of(course, vessel));
        return course.SeamPaths.Select((path, i) => Along(
            NameOf(course, i), [ids[(i + ids.Length - 1) % ids.Length], ids[i]], course.Outer, course.Seams.Of(i), course.RootGap,
            course.Wall,
            (WeldRole.LongSeam, path, course.Path, course.RootGapPath)));
    }

    /// <param name="number">Number of the seam, from 0.</param>
    public static string NameOf(ShellCourse course, int number) => course.Seams.Count == 1 ? $"long seam of {course.Name}"
        : string.Create(CultureInfo.InvariantCulture, $"long seam {number + 1} of {course.Name}");

    /// <param name="asked">What it is, its own path, and those of the mapping that it belongs to and of the key that sets its gap.</param>
    /// <param name="line">Line of the outside, upward, in the vessel's frame.</param>
    public static Joint Along(
        string name, ImmutableArray<string> between, LinePiece line, double angle, double gap, double wall,
        (WeldRole Role, string Path, string Owner, string? GapKey) asked)
    {
        var (sin, cos) = Math.SinCos(angle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var (rise, foot) = (line.B.V - line.A.V, line.A.V);
        Vector3 At(Point2 place) => (place.U * outward) + (place.V * Vector3.UnitZ);
        var along = (1 / rise) * At(line.B - line.A);
        return new(
            name,
            between,
            JointKind.Butt,
            new(foot, line.B.V),
            [],
            z => new(At(line.A) + ((z - foot) * along), along, -sideways, sideways, Math.PI, gap, gap),
            wall,
            wall,
            asked.Path)
        {
            Role = asked.Role,
            Owner = asked.Owner,
            GapKey = asked.GapKey,
        };
    }

    /// <summary>The key that turns a long seam and, of several, all those beside it.</summary>
    public static string Turning(Joint seam) => seam.Path.EndsWith(']') ? seam.Path[..seam.Path.LastIndexOf('[')] : seam.Path;
}
