using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>The hole that the host of a port is opened with, made along the port's axis.</summary>
internal static class PortHole
{
    /// <param name="number">Within the host.</param>
    /// <param name="centre">Centre as of <see cref="Hole"/>, like the other two.</param>
    public static Hole HoleInHost(this PortSite site, int number, Point2 centre, Loop2? outline, Point2? onOutside = null)
    {
        var (port, diameter) = (site.Port, 2 * site.OpeningRadius);
        return new(
            number,
            (port.Joint == PortJoint.SetOn ? $"bore of {port.Name}" : $"way for {port.Name}")
                + (site.Over is { } head ? $", through shell and {Names.Of(head)} when their seam is welded" : ""),
            centre,
            outline,
            diameter,
            null,
            null,
            HoleMethods.Through(diameter),
            onOutside)
        {
            IsLater = site.Over is not null,
            Clearance = port.Joint == PortJoint.SetIn ? port.Clearance : null,
        };
    }
}
