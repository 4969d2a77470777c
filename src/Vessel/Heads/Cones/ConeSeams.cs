using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Heads.Cones;

/// <summary>The butt welds along lines of a cone, on its outside: one, or one between two segments each.</summary>
internal static class ConeSeams
{
    public static IEnumerable<Joint> Of(VesselEnd end, ConeHead head, VesselDesign vessel)
    {
        var (cone, name) = (head.SheetAt(end, vessel), Names.Of(end));
        var ids = SheetPiece.Ids(head.Pieces(end, vessel));
        return head.Seams.Angles.Select((angle, i) => head.Segments == 1
            ? Of(head, cone, angle, [ids[0], ids[0]]) with
            {
                Name = $"seam of {name}",
                Path = $"{head.Path}.seam_angle",
                Words = Words("", cone, true),
            }
            : Of(head, cone, angle, [ids[(i + head.Segments - 1) % head.Segments], ids[i]]) with
            {
                Name = string.Create(CultureInfo.InvariantCulture, $"{name} segment to {name} segment, seam {i + 1}"),
                Path = string.Create(CultureInfo.InvariantCulture, $"{head.Path}.seam_angle[{i}]"),
                Words = Words("all segments clamped round; ", cone, i == head.Segments - 1),
            });
    }

    /// <param name="isLast">The rim is measured at the last of several.</param>
    private static JointWords Words(string fitUp, ConeShape cone, bool isLast) => new(fitUp)
    {
        Heed = "tack from both ends towards the middle with the gap held, weld in back-steps; the edges dip inward along the seam: dress "
            + "the cone round after",
        Check = isLast
            ? FormattableString.Invariant($"root through all along; circumference {Turns.Full * cone.Outer.B.U:0.0} mm at the wide edge, ")
                + "outside, by tape; a straightedge lies along the cone"
            : "root through all along; edges in line, a straightedge lies along the cone",
    };

    private static Joint Of(ConeHead head, ConeShape cone, double angle, string[] between)
    {
        var (sin, cos) = Math.SinCos(angle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var up = cone.Frame.Z;
        Vector3 Placed(Point2 at) => cone.Frame.Origin + (at.U * outward) + (at.V * up);
        var along = (1 / cone.Length) * (Placed(cone.Outer.B) - Placed(cone.Outer.A));
        return new(
            string.Empty,
            [.. between],
            JointKind.Butt,
            new(0, cone.Length),
            [],
            s => new(Placed(cone.Outer.At(s)), along, -sideways, sideways, Math.PI, head.RootGap, head.RootGap),
            head.Wall,
            head.Wall,
            head.Path)
        {
            Role = WeldRole.ConeSeam,
            Owner = head.Path,
            GapKey = $"{head.Path}.root_gap",
        };
    }
}
