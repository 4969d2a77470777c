namespace Vessel.Stock;

/// <summary>
/// What a fillet may carry in shear on its throat, MPa: 0.30 of the filler's tensile strength for steels (AWS D1.1 and AISC,
/// allowable stress, from memory); the least longitudinal shear strength over 1.95 for aluminium (Aluminum Design Manual,
/// from memory). For static loads; no rating.
/// </summary>
public static class ThroatStrength
{
    private const double Ksi = 6.894757;

    private const double SteelShare = 0.30;

    private const double AluminiumFactor = 1.95;

    public static Datum Of(Filler filler) => filler.Name switch
    {
        "ER70S-2" => Steel(70),
        "ER308L" or "ER316L" or "ER309L" => Steel(75),
        "ER4043" => Aluminium(11.5),
        "ER5356" => Aluminium(17),
        "ER5554" => Aluminium(15),
        _ => throw new ArgumentOutOfRangeException(nameof(filler), filler.Name, "has no strength"),
    };

    private static Datum Steel(double tensile) => new(
        SteelShare * tensile * Ksi, $"0.30 of {tensile:0} ksi tensile strength, AWS D1.1 and AISC (from memory)");

    private static Datum Aluminium(double shear) => new(
        shear * Ksi / AluminiumFactor, FormattableString.Invariant($"{shear:0.0} ksi shear strength over 1.95, Aluminum Design Manual (from memory)"));
}
