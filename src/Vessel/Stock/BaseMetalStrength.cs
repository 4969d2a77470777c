namespace Vessel.Stock;

/// <summary>
/// What the metal beside a weld may carry, MPa of its wall, as welded and for static loads; no rating. Steels: 0.4 of the yield and 0.3
/// of the strength in shear, 0.6 and 0.5 of them in tension, whichever is less (AISC table J2.5 and chapter J4, allowable stress).
/// Aluminium: shear as 0.6 of tension; yield over 1.65, strength over 1.95 (Aluminum Design Manual, from memory).
/// </summary>
public static class BaseMetalStrength
{
    private const double ShearOfTension = 0.6;

    /// <summary>Allowed stress in shear along the weld, MPa.</summary>
    public static Datum Shear(Material material) => Of(material, 0.4, 0.3, ShearOfTension, "shear");

    /// <summary>Allowed stress in tension across the weld, MPa.</summary>
    public static Datum Pull(Material material) => Of(material, 0.6, 0.5, 1, "tension");

    private static Datum Of(Material material, double ofYield, double ofStrength, double ofAluminium, string word)
    {
        const double Yield = 1.65;
        const double Strength = 1.95;
        var metal = Strengths.Of(material);
        return material.Family == MaterialFamily.Aluminium
            ? new(ofAluminium * Math.Min(metal.Yield / Yield, metal.Tensile / Strength), FormattableString.Invariant(
                $"{metal.Material} as welded in {word}: {(ofAluminium < 1 ? "0.6 of " : "")}the yield over 1.65 (Aluminum Design Manual, not checked against the source); {metal.YieldSource}"))
            : new(Math.Min(ofYield * metal.Yield, ofStrength * metal.Tensile), FormattableString.Invariant(
                $"{metal.Material} beside the weld in {word}: {ofYield:0.0} of its yield (AISC table J2.5); {metal.YieldSource}"));
    }
}
