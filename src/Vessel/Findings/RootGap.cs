using Vessel.Design;
using Vessel.Joints;

namespace Vessel.Findings;

/// <summary>How far edges may stand apart before a TIG weld on thin wall, mm, as the shop sets it.</summary>
internal static class RootGap
{
    /// <summary>The wall whose share the gap may be: of a port or bracket its own, else the thinner of the two.</summary>
    public static double WallOf(Joint joint, VesselDesign design) =>
        design.Ports.FirstOrDefault(port => port.Path == joint.Path)?.Wall
        ?? design.Brackets.FirstOrDefault(bracket => joint.Path.StartsWith(bracket.Path + ".", StringComparison.Ordinal))?.Thickness
        ?? joint.Wall;

    /// <summary>No more than the most that may be, which on thick wall is the shop's own limit.</summary>
    public static double Aim(double wall, WeldingShop shop) => Math.Min(shop.GapAim * wall, Most(wall, shop));

    public static double Most(double wall, WeldingShop shop) => Math.Min(shop.GapMost * wall, shop.GapLimit);
}
