using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>Where a port's bore opens to the inside: the tube's own end when set in, else the host's inner face.</summary>
internal static class Mouth
{
    private const int Samples = 360;

    /// <summary>Lowest and highest point of the mouth's rim, mm in the vessel's frame.</summary>
    public static Interval Of(PortSite site)
    {
        var heights = Enumerable.Range(0, Samples).Select(i => At(site, Turns.Full * i / Samples).Z).ToList();
        return new(heights.Min(), heights.Max());
    }

    private static Vector3 At(PortSite site, double phi)
    {
        var r = site.Port.BoreRadius;
        if (site.Port.Joint == PortJoint.SetIn)
            return site.Frame.ToOuter(Footprint.OnLine(r, phi, site.InnerEnd));
        // A bore that grazes the inner face is told by the outer one.
        return site.Frame.ToOuter(site.Inside.Takes(r) ? site.Inside.At(r, phi) : site.Outside.At(r, phi));
    }
}
