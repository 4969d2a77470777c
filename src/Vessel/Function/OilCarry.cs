namespace Vessel.Function;

/// <summary>How much oil an engine's blow-by carries along, where nobody has measured it.</summary>
public static class OilCarry
{
    public const string Source =
        "15 g of oil an hour, the upper end of 2 to 15 g/h of heavy-duty diesels (FISITA 2005), at 870 g/L, all of it caught";

    private const double Grams = 15;

    private const double GramsPerLitre = 870;

    /// <summary>Upper end of the usual range, L; a worn engine carries more, and water comes on top in cold weather.</summary>
    public static double Of(double hours) => hours * Grams / GramsPerLitre;
}
