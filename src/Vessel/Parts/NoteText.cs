using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>Figures as they stand in notes and messages.</summary>
public static class NoteText
{
    /// <summary>Millimetres to a hundredth, shortest.</summary>
    public static string Length(double millimetres) => Rounded(millimetres, 2);

    /// <summary>Degrees to a tenth, shortest.</summary>
    public static string Degrees(double radians) => Rounded(Turns.ToDegrees(radians), 1);

    /// <summary>A share in percent to a tenth, shortest.</summary>
    public static string Percent(double share) => Rounded(100 * share, 1);

    private static string Rounded(double value, int digits) =>
        // Adding zero turns -0 into 0.
        (Math.Round(value, digits) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
