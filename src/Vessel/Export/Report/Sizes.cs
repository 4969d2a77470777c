using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Export.Report;

/// <summary>How the page tells sizes: in the unit of the design file.</summary>
internal sealed record Sizes(UserUnits Units)
{
    private const double Inch = 25.4;

    public string Unit => Units == UserUnits.Inches ? "in" : "mm";

    /// <summary>A length to be measured with a rule: to 0.1 mm or 0.01 in.</summary>
    public string Length(double mm) => Units == UserUnits.Inches ? Text(mm / Inch, 2) : Text(mm, 1);

    /// <summary>A thickness, diameter or gap: to 0.01 mm or 0.001 in.</summary>
    public string Fine(double mm) => Units == UserUnits.Inches ? Text(mm / Inch, 3) : Text(mm, 2);

    public string WithUnit(double mm) => $"{Length(mm)} {Unit}";

    /// <summary>A figure of a unit that does not change with the design's.</summary>
    public static string Text(double value, int digits) => Numbers.Text(value, digits);

    public static string Degrees(double radians) => Text(Turns.ToDegrees(radians), 1);

    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Litres from mm3.</summary>
    public static string Litres(double volume) => Text(volume / 1e6, 2);
}
