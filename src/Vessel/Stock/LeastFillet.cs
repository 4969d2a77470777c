namespace Vessel.Stock;

/// <summary>
/// The least leg of a fillet on carbon steel, mm: 1/8 in to 1/4 in of plate, 3/16 in to 1/2 in, 1/4 in to 3/4 in, then 5/16 in. TIG
/// brings no hydrogen, so that the thinner part decides, and the leg is never more than that. For parts from 1/8 in.
/// </summary>
public static class LeastFillet
{
    public const string Source = "AWS D1.1:2025 table 7.7, low-hydrogen processes; carbon steel from 1/8 in";

    private const double Inch = 25.4;

    /// <summary>Null where the table does not hold: thinner parts; stainless and aluminium, for which D1.1 is no code.</summary>
    public static double? Leg(MaterialFamily family, double thinner)
    {
        if (family != MaterialFamily.MildSteel || !(thinner >= Inch / 8))
            return null;
        var least = thinner <= Inch / 4 ? Inch / 8 : thinner <= Inch / 2 ? Inch * 3 / 16 : thinner <= Inch * 3 / 4 ? Inch / 4
            : Inch * 5 / 16;
        return Math.Min(least, thinner);
    }
}
