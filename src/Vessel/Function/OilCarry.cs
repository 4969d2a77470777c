namespace Vessel.Function;

/// <summary>How much oil an engine's blow-by carries along, where nobody has measured it.</summary>
public static class OilCarry
{
    public const string Source =
        "2 to 15 g/h lost with the blow-by of heavy-duty diesels (FISITA 2005), all of it taken to stay here; 8 likely, the middle of "
            + "that: derived here";

    private const double GramsPerLitre = 870;

    /// <summary>g/h.</summary>
    public static Amount Rate { get; } = new(2, 8, 15);

    /// <summary>
    /// Upper end of the usual range for a first design, L; a worn engine carries more, and water comes on top in cold weather.
    /// </summary>
    public static double Of(double hours) => hours * Rate.High / GramsPerLitre;
}
