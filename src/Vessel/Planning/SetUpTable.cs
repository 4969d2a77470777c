using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Planning;

/// <summary>The measured positions of everything that is set up on the bench.</summary>
public static class SetUpTable
{
    /// <summary>Seams, then members: in that order.</summary>
    public static ImmutableArray<SetUp> Of(Assembly assembly)
    {
        var design = assembly.Design;
        SetUp Held(SetUp row, string path) => row with
        {
            Welds =
            [
                .. assembly.Welds.Select(weld => weld.Joint)
                    .Where(joint => joint.Path == path || joint.Owner == path)
                    .Select(joint => joint.Number),
            ],
        };
        return
        [
            .. design.Shell.Courses.SelectMany(course => course.SeamPaths.Select((path, i) => Held(Seam(course, i), path))),
            .. assembly.Members.Select(member => member.SetUp is { } row ? Held(row, member.Path) : null).OfType<SetUp>(),
        ];
    }

    private static SetUp Seam(ShellCourse course, int number) => course.Shell.IsPlain
        ? OnShell(
            course.Seams.Count == 1 ? "long seam" : LongSeam.NameOf(course, number), course.Shell, (0, course.Seams.Of(number)), null, null,
            "up the whole height")
        : OnShell(
            LongSeam.NameOf(course, number), course.Shell, (course.Start, course.Seams.Of(number)), null, null,
            FormattableString.Invariant($"from its lower edge up, {course.Outer.Length:0.##} mm along the outside"));

    /// <summary>The line of something on the shell's outside.</summary>
    internal static SetUp OnShell(
        string what, ShellDesign shell, (double Height, double Angle) at, double? offset, double? depth, string remark) => new(
        what, "shell's lower edge", at.Height, Turns.ToDegrees(Turns.From(at.Angle, 0)), shell.OuterAt(at.Height) * Turns.From(at.Angle, 0),
        offset, depth, remark);

    /// <summary>The line of something inside, on the vessel's axis.</summary>
    internal static SetUp Inside(string what, double height, VesselDesign design, string remark) =>
        new(what, "shell's lower edge", height, null, null, 0, design.Shell.Height - height,
            remark + "; depth from the shell's upper edge");
}
