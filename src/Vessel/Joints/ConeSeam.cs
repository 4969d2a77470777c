using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt welds along lines of a cone, on its outside: one, or one between two segments each.</summary>
internal static class ConeSeam
{
    /// <summary>None for any other head.</summary>
    public static IEnumerable<Joint> Of(PortHost end, VesselDesign vessel)
    {
        if (vessel.Head(end) is not ConeHead head)
            return [];
        var cone = ConeShape.Of(end, head, vessel);
        var ids = SheetPiece.Ids(SheetPiece.Of(end, head, vessel));
        return head.Seams.Angles.Select((angle, i) => Of(
            cone,
            angle,
            head.Segments == 1 ? $"{head.Path}.seam_angle" : string.Create(CultureInfo.InvariantCulture, $"{head.Path}.seam_angle[{i}]"),
            head.Segments == 1 ? $"seam of {Names.Of(end)}"
                : string.Create(CultureInfo.InvariantCulture, $"{Names.Of(end)} segment to {Names.Of(end)} segment, seam {i + 1}"),
            [ids[(i + head.Segments - 1) % head.Segments], ids[i]]));
    }

    private static Joint Of(ConeShape cone, double angle, string path, string name, string[] between)
    {
        var (sin, cos) = Math.SinCos(angle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var (up, head) = (cone.Frame.Z, cone.Head);
        Vector3 Placed(Point2 at) => cone.Frame.Origin + (at.U * outward) + (at.V * up);
        var along = (1 / cone.Length) * (Placed(cone.Outer.B) - Placed(cone.Outer.A));
        return new(
            name,
            [.. between],
            JointKind.Butt,
            new(0, cone.Length),
            [],
            s => new(Placed(cone.Outer.At(s)), along, -sideways, sideways, Math.PI, head.RootGap, head.RootGap),
            head.Wall,
            head.Wall,
            path)
        {
            Role = WeldRole.ConeSeam,
            Owner = head.Path,
            GapKey = $"{head.Path}.root_gap",
        };
    }
}
