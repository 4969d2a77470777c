using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Lengths by which a cut dimension may be off, mm either way.</summary>
public static class CuttingTolerances
{
    public const string LaserSource = Sources.LaserClass;

    public const string ShopSource = "ISO 2768-1, class m, from web tables of the standard";

    /// <summary>Upper ends of the ranges of dimension, mm.</summary>
    private static readonly ImmutableArray<double> _laserSizes = [3, 10, 35, 125, 315, 1000];

    private static readonly ImmutableArray<(double Thickness, ImmutableArray<double> Off)> _laser =
    [
        (1, [0.075, 0.10, 0.10, 0.20, 0.20, 0.30]),
        (3.15, [0.10, 0.15, 0.20, 0.25, 0.25, 0.35]),
        (6.3, [0.20, 0.20, 0.25, 0.25, 0.30, 0.40]),
    ];

    private static readonly ImmutableArray<double> _shopSizes = [3, 6, 30, 120, 400, 1000, 2000];

    private static readonly ImmutableArray<double> _shop = [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2];

    /// <summary>Cut by laser from sheet. Beyond the printed ranges the last value grows in proportion: an estimate.</summary>
    public static double Laser(double dimension, double thickness)
    {
        var row = _laser.FirstOrDefault(row => thickness <= row.Thickness, _laser[^1]);
        return Math.Max(1, thickness / _laser[^1].Thickness) * Off(dimension, _laserSizes, row.Off);
    }

    /// <summary>Sawn, drilled or turned; of a bought tube see <see cref="TubeTolerances"/>.</summary>
    public static double Shop(double dimension) => Off(dimension, _shopSizes, _shop);

    /// <summary>Rows of both tables for <c>stock</c>.</summary>
    public static IEnumerable<(string Process, double? Thickness, double Size, double Off, string Source)> All =>
    [
        .. _laser.SelectMany(row => _laserSizes.Select((size, i) => ("laser", (double?)row.Thickness, size, row.Off[i], LaserSource))),
        .. _shopSizes.Select((size, i) => ("shop", (double?)null, size, _shop[i], ShopSource)),
    ];

    private static double Off(double dimension, ImmutableArray<double> sizes, ImmutableArray<double> off)
    {
        var i = 0;
        while (i < sizes.Length - 1 && dimension > sizes[i])
            i++;
        return off[i] * Math.Max(1, dimension / sizes[^1]);
    }
}
