using Vessel.Design;

namespace Vessel.Findings;

/// <summary>How far edges may stand apart before a TIG weld on thin wall, mm, as the shop sets it.</summary>
internal static class RootGap
{
    public static double Aim(double wall, WeldingShop shop) => shop.GapAim * wall;

    public static double Most(double wall, WeldingShop shop) => Math.Min(shop.GapMost * wall, shop.GapLimit);
}
