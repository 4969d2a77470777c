using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A port's hole in a head, made along the port's axis.</summary>
internal static class HeadHole
{
    public static Hole Of(int number, PortSite site, Point2 centre, Loop2? outline) => new(
        number,
        site.Port.Joint == PortJoint.SetOn ? $"bore of {site.Port.Name}" : $"way for {site.Port.Name}",
        centre,
        outline,
        2 * site.OpeningRadius,
        null,
        null,
        HoleMethods.Through(2 * site.OpeningRadius),
        null);
}
