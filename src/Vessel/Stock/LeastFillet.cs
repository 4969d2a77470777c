namespace Vessel.Stock;

/// <summary>
/// The least leg of a fillet on steel by the thicker part, mm: 1/8 in to 1/4 in of plate, 3/16 in to 1/2 in, 1/4 in to
/// 3/4 in, then 5/16 in; never more than the thinner part. For parts from 1/8 in.
/// </summary>
public static class LeastFillet
{
    public const string Source = "AWS D1.1 table 7.7; it holds for steel from 1/8 in";

    private const double Inch = 25.4;

    /// <summary>Null where the table does not hold: thinner parts, or aluminium.</summary>
    public static double? Leg(MaterialFamily family, double thinner, double thicker)
    {
        if (family == MaterialFamily.Aluminium || !(thinner >= Inch / 8))
            return null;
        var least = thicker <= Inch / 4 ? Inch / 8 : thicker <= Inch / 2 ? Inch * 3 / 16 : thicker <= Inch * 3 / 4 ? Inch / 4 : Inch * 5 / 16;
        return Math.Min(least, thinner);
    }
}
