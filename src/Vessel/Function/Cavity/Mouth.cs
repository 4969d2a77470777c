using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>Where a port's bore opens to the inside: the tube's own end when set in, else the host's inner face.</summary>
internal static class Mouth
{
    private const int Samples = 360;

    /// <summary>The mouth's rim by points, in the vessel's frame.</summary>
    public static PointsEdge Of(PortSite site) =>
        new([.. Enumerable.Range(0, Samples).Select(i => At(site, Turns.Full * i / Samples))]);

    private static Vector3 At(PortSite site, double phi)
    {
        var r = site.Port.BoreRadius;
        if (site.Port.Joint == PortJoint.SetIn)
            return site.Frame.ToOuter(Footprint.OnLine(r, phi, site.InnerEnd));
        // A bore that grazes the inner face is told by the outer one.
        return site.Frame.ToOuter(site.Inside.Takes(r) ? site.Inside.At(r, phi) : site.Outside.At(r, phi));
    }
}
