using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt weld up a rolled shell, on its outside.</summary>
internal static class LongSeam
{
    public static Joint Of(ShellDesign shell, WeldNumbers welds)
    {
        var (sin, cos) = Math.SinCos(shell.SeamAngle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        return new(
            welds[WeldNumbers.LongSeam],
            "long seam of shell",
            [Names.Shell, Names.Shell],
            JointKind.Butt,
            new(0, shell.Height),
            [],
            z => new((shell.OuterRadius * outward) + (z * Vector3.UnitZ), Vector3.UnitZ, -sideways, sideways, Math.PI, shell.RootGap, shell.RootGap),
            shell.Wall,
            shell.Wall,
            WeldNumbers.LongSeam);
    }
}
