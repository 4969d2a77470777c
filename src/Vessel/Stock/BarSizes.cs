using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Round bar as it is sold, mm: metric sizes of EN 10060, and sixteenths of an inch up to 4 in; from memory.</summary>
public static class BarSizes
{
    /// <summary>A bar is a size within this, mm.</summary>
    private const double Same = 0.05;

    private static readonly ImmutableArray<double> _all =
    [
        .. new double[]
            {
                10, 12, 13, 14, 15, 16, 18, 19, 20, 22, 24, 25, 26, 27, 28, 30, 32, 35, 36, 38, 40, 42, 45, 48, 50, 52, 55, 60, 63, 65, 70,
                73, 75, 80,
                85, 90, 95, 100, 105, 110, 115, 120, 125, 130, 135, 140, 145, 150, 155, 160, 165, 170, 175, 180, 190, 200,
            }
            .Concat(Enumerable.Range(6, 59).Select(sixteenths => sixteenths * 25.4 / 16))
            .Order(),
    ];

    /// <summary>The smallest that a piece of that diameter is turned from; the diameter itself beyond the largest.</summary>
    public static double Bought(double diameter)
    {
        foreach (var size in _all)
        {
            if (size >= diameter - Same)
                return size;
        }

        return diameter;
    }
}
