using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>TIG rod alloys, and which of them joins which metals.</summary>
public static class Fillers
{
    public static Filler Er4043 { get; } = new("ER4043", 2.69, "AWS A5.10 alloy; density from memory");

    public static Filler Er5356 { get; } = new("ER5356", 2.65, "AWS A5.10 alloy; density from memory, 2.64 to 2.66");

    public static Filler Er5554 { get; } = new("ER5554", 2.69, "AWS A5.10 alloy; density from memory");

    public static Filler Er308L { get; } = new("ER308L", 7.9, "AWS A5.9 alloy; density from memory");

    public static Filler Er316L { get; } = new("ER316L", 7.9, "AWS A5.9 alloy; density from memory");

    public static Filler Er309L { get; } = new("ER309L", 7.9, "AWS A5.9 alloy; density from memory");

    public static Filler Er70S2 { get; } = new("ER70S-2", 7.85, "AWS A5.18 alloy; density from memory");

    public static ImmutableArray<Filler> All { get; } = [Er4043, Er5356, Er5554, Er308L, Er316L, Er309L, Er70S2];

    /// <summary>Above this ER5356 is not for lasting service, degrees Celsius (The Fabricator, 5356 or 4043).</summary>
    public const double Hot = 65;

    /// <summary>
    /// The rod between two metals in service at a temperature, degrees Celsius: as <see cref="Between(Material, Material)"/>,
    /// but ER5554 instead of ER5356 where it is hot.
    /// </summary>
    public static Filler? Between(Material a, Material b, double temperature) =>
        Between(a, b) is { } usual && usual == Er5356 && temperature > Hot ? Er5554 : Between(a, b);

    /// <summary>
    /// The usual rod between two metals; null where fusion welding does not join them (aluminium to any steel).
    /// Common practice, no single source: ER309L where stainless meets mild steel; ER4043 where two aluminium alloys
    /// ask for different rods.
    /// </summary>
    public static Filler? Between(Material a, Material b)
    {
        if (a.Filler == b.Filler)
            return a.Filler;
        if (a.Family != b.Family)
            return a.Family == MaterialFamily.Aluminium || b.Family == MaterialFamily.Aluminium ? null : Er309L;
        return a.Family == MaterialFamily.Aluminium ? Er4043 : Er308L;
    }
}
