using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>Figures as they stand in notes and messages.</summary>
public static class NoteText
{
    /// <summary>A length from which on a tenth of a millimetre is all that a hand can measure, mm.</summary>
    private const double Fine = 10;

    /// <summary>Nearness to a hundredth of a millimetre to which nothing but rounding moves it.</summary>
    private const double Noise = 1e-7;

    /// <summary>
    /// Millimetres, shortest: a size that is whole in hundredths, as it is given, stays as it is; a computed one is rounded to a tenth,
    /// below 10 mm to a hundredth.
    /// </summary>
    public static string Length(double millimetres)
    {
        var given = Math.Abs(millimetres - Math.Round(millimetres, 2)) < Noise;
        return Rounded(millimetres, given || Math.Abs(millimetres) < Fine ? 2 : 1);
    }

    /// <summary>Degrees to a tenth, shortest.</summary>
    public static string Degrees(double radians) => Rounded(Turns.ToDegrees(radians), 1);

    /// <summary>A share in percent to a tenth, shortest.</summary>
    public static string Percent(double share) => Rounded(100 * share, 1);

    private static string Rounded(double value, int digits) =>
        // Adding zero turns -0 into 0.
        (Math.Round(value, digits) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
