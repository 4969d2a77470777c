using Vessel.Design;

namespace Vessel.Joints;

/// <summary>How far edges may stand apart before a TIG weld on thin wall, mm, as the shop sets it.</summary>
internal static class RootGap
{
    /// <summary>The wall whose share the gap may be: of a port or bracket its own, else the thinner of the two.</summary>
    public static double WallOf(Joint joint) => joint.OwnWall ?? joint.Wall;

    /// <summary>What is aimed for; never more than the most, which on thick walls does not grow with them.</summary>
    public static double Aim(double wall, WeldingShop shop) => Math.Min(shop.GapAim * wall, Most(wall, shop));

    /// <summary>What is aimed for and the most that is taken, in words: <c>aim for 0.5 mm, no more than 1 mm</c>.</summary>
    /// <param name="length">A length without its unit.</param>
    public static string Limits(double wall, WeldingShop shop, Func<double, string> length, string unit)
    {
        var (aim, most) = (Aim(wall, shop), Most(wall, shop));
        return aim < most ? $"aim for {length(aim)} {unit}, no more than {length(most)} {unit}" : $"no more than {length(most)} {unit}";
    }

    public static double Most(double wall, WeldingShop shop) => Math.Min(shop.GapMost * wall, shop.GapLimit);
}
