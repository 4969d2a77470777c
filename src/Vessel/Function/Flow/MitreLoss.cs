using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>What a mitred elbow takes from the pressure, in dynamic pressures of its bore.</summary>
/// <remarks>
/// Single mitres, smooth and rough, at a Reynolds number of 2.2e5: Kirchbach and Schubart, Munich 1929, as handbooks print them; from
/// memory. Of mitres after each other the next stands in the wake of the last and takes less, the less the nearer: two of 45 degrees 1.42
/// bores apart were measured at 0.261 in a smooth tube where one takes 0.236 (the same authors, from memory). So the lower bound is one
/// smooth mitre alone, the upper one all rough mitres added up; likely is the mean of smooth and rough, each mitre behind the first at
/// half.
/// </remarks>
internal static class MitreLoss
{
    private static readonly ImmutableArray<(double Degrees, double Smooth, double Rough)> _single =
    [
        (0, 0, 0), (5, 0.016, 0.024), (10, 0.034, 0.044), (15, 0.042, 0.062), (22.5, 0.066, 0.154), (30, 0.130, 0.165),
        (45, 0.236, 0.320), (60, 0.471, 0.684), (90, 1.129, 1.265),
    ];

    public static Amount Of(ElbowDesign elbow)
    {
        var (smooth, rough) = Single(2 * elbow.Slant);
        var mitres = elbow.Mitres;
        return new(smooth, (smooth + rough) / 2 * (1 + ((mitres - 1) / 2.0)), mitres * rough);
    }

    /// <summary>Loss factors of one mitre that turns by so much, radians; straight between the table's lines.</summary>
    public static (double Smooth, double Rough) Single(double turn)
    {
        var degrees = Turns.ToDegrees(turn);
        var i = 1;
        while (i + 1 < _single.Length && _single[i].Degrees < degrees)
            i++;
        var (a, b) = (_single[i - 1], _single[i]);
        var share = (degrees - a.Degrees) / (b.Degrees - a.Degrees);
        return (a.Smooth + (share * (b.Smooth - a.Smooth)), a.Rough + (share * (b.Rough - a.Rough)));
    }
}
