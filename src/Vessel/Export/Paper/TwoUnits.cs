using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>Lengths in the design's units and in the other, for a bench with either kind of scale.</summary>
internal sealed record TwoUnits(UserUnits First)
{
    private const double Inch = 25.4;

    /// <summary>Names of the two units of a pair, in their order.</summary>
    public (string First, string Second) Names => First == UserUnits.Inches ? ("in", "mm") : ("mm", "in");

    /// <summary>Length to 0.01 mm and to 0.001 in.</summary>
    public (string First, string Second) Of(double mm)
    {
        var (metric, inches) = (mm.ToString("0.00", CultureInfo.InvariantCulture),
            (mm / Inch).ToString("0.000", CultureInfo.InvariantCulture));
        (metric, inches) = (Unsigned(metric), Unsigned(inches));
        return First == UserUnits.Inches ? (inches, metric) : (metric, inches);
    }

    public string Both(double mm) => $"{Of(mm).First} {Names.First} ({Of(mm).Second} {Names.Second})";

    public static string Degrees(double radians) => Unsigned(Turns.ToDegrees(radians).ToString("0.0", CultureInfo.InvariantCulture));

    // -0.00 is 0.00.
    private static string Unsigned(string figure) => figure.AsSpan().ContainsAnyInRange('1', '9') ? figure : figure.TrimStart('-');
}
