using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>
/// What the metal of a weld may carry, MPa of its throat, for static loads; no rating. Steels: 0.30 of the filler's tensile
/// strength in shear, 0.32 across a groove (AISC table J2.5, allowable stress; the 0.32 from memory). Aluminium: the filler's least
/// shear and tensile strength over 1.95 (Aluminum Design Manual, from memory).
/// </summary>
public static class WeldMetalStrength
{
    private const double SteelShear = 0.30;

    private const double SteelPull = 0.32;

    private const double AluminiumFactor = 1.95;

    /// <summary>Least strengths, ksi: shear along a fillet, and tension; of a steel its tension alone is classified.</summary>
    private static readonly ImmutableDictionary<string, (double? Shear, double Tensile)> _strengths =
        new Dictionary<string, (double? Shear, double Tensile)>
        {
            ["ER70S-2"] = (null, 70),
            ["ER308L"] = (null, 75),
            ["ER316L"] = (null, 70),
            ["ER309L"] = (null, 75),
            ["ER4043"] = (11.5, 24),
            ["ER5356"] = (17, 35),
            ["ER5554"] = (15, 31),
        }.ToImmutableDictionary();

    /// <summary>Strength in shear on the throat, MPa.</summary>
    public static Datum Shear(Filler filler) => _strengths[filler.Name] is var (shear, tensile) && shear is { } aluminium
        ? Aluminium(aluminium, "shear")
        : Steel(SteelShear, tensile);

    /// <summary>Across a groove, MPa.</summary>
    public static Datum Pull(Filler filler) => _strengths[filler.Name] is var (shear, tensile) && shear is not null
        ? Aluminium(tensile, "tensile")
        : Steel(SteelPull, tensile);

    private static Datum Steel(double share, double tensile) => new(
        share * tensile * Strengths.Ksi,
        FormattableString.Invariant($"weld metal: {share:0.00} of the filler's {tensile:0} ksi tensile strength (AISC table J2.5; the ")
            + "filler's strength not checked against the source)");

    private static Datum Aluminium(double strength, string kind) => new(
        strength * Strengths.Ksi / AluminiumFactor,
        FormattableString.Invariant($"weld metal: {strength:0.0} ksi {kind} strength of the filler over 1.95 (Aluminum Design Manual, not ")
            + "checked against the source)");
}
