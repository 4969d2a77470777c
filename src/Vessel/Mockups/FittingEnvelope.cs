using Vessel.Design;

namespace Vessel.Mockups;

/// <summary>The room that a fitting takes up beyond a tube's free end: a cylinder round its nut.</summary>
/// <remarks>
/// Across flats of the swivel nuts of 37 degree fittings (SAE J514), inches, from memory; the corners of a hexagon reach
/// 2 / sqrt(3) as far. Nut and thread together are about as long as the nut is wide: common practice, no source.
/// </remarks>
/// <param name="AcrossFlats">mm.</param>
/// <param name="Radius">Over the corners, mm.</param>
/// <param name="Length">mm.</param>
public sealed record FittingEnvelope(double AcrossFlats, double Radius, double Length)
{
    private const double Inch = 25.4;

    /// <summary>Null when nothing is bought for the port's end.</summary>
    public static FittingEnvelope? Of(PortDesign port)
    {
        if (port.Fitting is not { } fitting)
            return null;
        var flats = fitting.Name switch
        {
            "dash 4" => Inch * 9 / 16,
            "dash 6" => Inch * 11 / 16,
            "dash 8" => Inch * 7 / 8,
            "dash 10" => Inch,
            "dash 12" => Inch * 5 / 4,
            "dash 16" => Inch * 3 / 2,
            "dash 20" => Inch * 2,
            // Nuts of other threads are about half as wide again as the thread.
            _ => 1.5 * fitting.MajorDiameter,
        };
        return new(flats, flats / Math.Sqrt(3), flats);
    }
}
