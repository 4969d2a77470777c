using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>Where a port's bore opens to the inside: the tube's own square end when set in, else the host's inner face.</summary>
internal static class Mouth
{
    private const int Samples = 360;

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
