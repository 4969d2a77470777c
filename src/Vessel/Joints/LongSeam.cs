using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt weld up a rolled tube, on its outside.</summary>
internal static class LongSeam
{
    public static Joint Of(ShellDesign shell, WeldNumbers welds) => Along(
        welds[WeldNumbers.LongSeam], "long seam of shell", Names.Shell, shell.OuterRadius, new(0, shell.Height),
        shell.SeamAngle, shell.RootGap, shell.Wall, WeldNumbers.LongSeam);

    /// <param name="heights">Lower and upper end, mm in the vessel's frame.</param>
    public static Joint Along(
        string number, string name, string part, double radius, Interval heights, double angle, double gap, double wall, string path)
    {
        var (sin, cos) = Math.SinCos(angle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        return new(
            number,
            name,
            [part, part],
            JointKind.Butt,
            heights,
            [],
            z => new((radius * outward) + (z * Vector3.UnitZ), Vector3.UnitZ, -sideways, sideways, Math.PI, gap, gap),
            wall,
            wall,
            path);
    }
}
