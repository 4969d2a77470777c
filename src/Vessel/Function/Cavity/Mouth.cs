using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>Where a port's bore opens to the inside: the tube's own square end when set in, else the host's inner face.</summary>
internal static class Mouth
{
    private const int Samples = 360;

    /// <summary>The sections of the bore behind the mouth: in the plane of each mitre, and the free end.</summary>
    public static IEnumerable<OpeningShape> Beyond(PortSite site)
    {
        var legs = site.Legs;
        for (var i = 0; i < legs.Length; i++)
        {
            var (end, next) = (legs[i].End, i + 1 < legs.Length ? legs[i + 1].Frame.Z : legs[i].Frame.Z);
            // Two equal bores meet in the plane that halves the angle between them.
            var across = (end.Z + next).Unit();
            Vector3 Cut(Vector3 aside) => site.Port.BoreRadius * (aside - (aside.Dot(across) / end.Z.Dot(across) * end.Z));
            yield return new EllipseEdge(end.Origin, Cut(end.X), Cut(end.Y));
        }
    }

    /// <summary>The mouth's rim by points, in the vessel's frame.</summary>
    public static PointsEdge Of(PortSite site)
    {
        var r = site.Port.BoreRadius;
        // A bore that grazes the inner face is told by the outer one.
        var face = site.Inside.Takes(r) ? site.Inside : site.Outside;
        return new([.. Enumerable.Range(0, Samples).Select(i => Turns.Full * i / Samples).Select(phi => site.Frame.ToOuter(
            site.Port is { Joint: PortJoint.SetIn, IsFlush: false } ? Footprint.OnLine(r, phi, site.InnerEnd) : face.At(r, phi)))]);
    }
}
