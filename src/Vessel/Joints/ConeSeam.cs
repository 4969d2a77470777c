using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt weld along a line of a cone, on its outside.</summary>
internal static class ConeSeam
{
    /// <summary>None for any other head.</summary>
    public static IEnumerable<Joint> Of(PortHost end, VesselDesign vessel, WeldNumbers welds)
    {
        if (vessel.Head(end) is not ConeHead head)
            yield break;
        var cone = ConeShape.Of(end, head, vessel);
        var (sin, cos) = Math.SinCos(head.SeamAngle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var up = cone.Frame.Z;
        Vector3 Placed(Point2 at) => cone.Frame.Origin + (at.U * outward) + (at.V * up);
        var along = (1 / cone.Length) * (Placed(cone.Outer.B) - Placed(cone.Outer.A));
        var path = WeldNumbers.ConeSeam(head);
        var name = Names.Of(end);
        yield return new(
            welds[path],
            $"seam of {name}",
            [name, name],
            JointKind.Butt,
            new(0, cone.Length),
            [],
            s => new(Placed(cone.Outer.At(s)), along, -sideways, sideways, Math.PI, head.RootGap, head.RootGap),
            head.Wall,
            head.Wall,
            path);
    }
}
