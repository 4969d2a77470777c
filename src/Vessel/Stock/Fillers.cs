using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>TIG rod alloys, and which of them joins which metals.</summary>
public static class Fillers
{
    public static Filler Er4043 { get; } = new("ER4043", 2.69, "AWS A5.10 alloy; density not checked against a source");

    public static Filler Er5356 { get; } = new("ER5356", 2.65, "AWS A5.10 alloy; density 2.64 to 2.66, not checked against a source");

    public static Filler Er5554 { get; } = new("ER5554", 2.69, "AWS A5.10 alloy; density not checked against a source");

    public static Filler Er308L { get; } = new("ER308L", 7.9, "AWS A5.9 alloy; density not checked against a source");

    public static Filler Er316L { get; } = new("ER316L", 7.9, "AWS A5.9 alloy; density not checked against a source");

    public static Filler Er309L { get; } = new("ER309L", 7.9, "AWS A5.9 alloy; density not checked against a source");

    public static Filler Er70S2 { get; } = new("ER70S-2", 7.85, "AWS A5.18 alloy; density not checked against a source");

    public static ImmutableArray<Filler> All { get; } = [Er4043, Er5356, Er5554, Er308L, Er316L, Er309L, Er70S2];

    /// <summary>
    /// Above this weld metal with more than 3 % of magnesium is not for lasting service, degrees Celsius: 150 degF
    /// (F. Armao, Practical Welding Today, May 2007).
    /// </summary>
    public const double Hot = 65;

    /// <summary>
    /// The rod between two metals as they will serve: as <see cref="Between(Material, Material)"/>, but ER5554 instead of ER5356
    /// where it is hot, and ER5356 instead of ER4043 where it is anodised and stays cool. The reason stands beside it where the
    /// service changed the rod, or could not.
    /// </summary>
    public static (Filler Filler, string? Why)? Between(Material a, Material b, FillerUse use)
    {
        var isHot = use.Temperature > Hot;
        if (Between(a, b) is not { } usual)
            return null;
        if (usual == Er5356 && isHot)
        {
            return (Er5554, FormattableString.Invariant(
                $"ER5554, not ER5356: at {use.Temperature:0.#} degC, above {Hot:0}, weld metal with more than 3 % magnesium cracks under ")
                    + "stress and corrosion (F. Armao, Practical Welding Today, May 2007)");
        }

        if (usual == Er4043 && use.IsAnodised)
        {
            return isHot
                ? (Er4043, "anodised, ER4043 beads turn dark grey; ER5356, which keeps its colour, does not stand this temperature")
                : (Er5356, "ER5356, not ER4043, whose beads turn dark grey when they are anodised (supplier's guides to 4043 and 5356)");
        }

        return (usual, null);
    }

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

/// <summary>What a weld has to stand beside its load.</summary>
/// <param name="Temperature">Lasting, degrees Celsius.</param>
/// <param name="IsAnodised">Whether the bead is anodised with the rest.</param>
public readonly record struct FillerUse(double Temperature, bool IsAnodised);
