using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>
/// Gauges. One number means four thicknesses: aluminium sheet goes by Brown and Sharpe, mild steel sheet by the
/// Manufacturers' Standard Gauge, stainless sheet by the old United States Standard, the wall of a tube by the Birmingham wire gauge.
/// </summary>
public static class Gauges
{
    private const double Inch = 25.4;

    public static ImmutableArray<int> Numbers { get; } = [8, 10, 11, 12, 13, 14, 16, 18, 20, 22, 24];

    /// <summary>Published thickness, in, in the order of <see cref="Numbers"/>.</summary>
    private static readonly ImmutableArray<double> _aluminium =
        [0.1285, 0.1019, 0.0907, 0.0808, 0.0720, 0.0641, 0.0508, 0.0403, 0.0320, 0.0253, 0.0201];

    private static readonly ImmutableArray<double> _mildSteel =
        [0.1644, 0.1345, 0.1196, 0.1046, 0.0897, 0.0747, 0.0598, 0.0478, 0.0359, 0.0299, 0.0239];

    private static readonly ImmutableArray<double> _stainless =
        [0.1719, 0.1406, 0.1250, 0.1094, 0.0937, 0.0781, 0.0625, 0.0500, 0.0375, 0.0312, 0.0250];

    private static readonly ImmutableArray<double> _birmingham =
        [0.165, 0.134, 0.120, 0.109, 0.095, 0.083, 0.065, 0.049, 0.035, 0.028, 0.022];

    /// <summary>Wall of a tube of that gauge, of whatever metal, mm; null for a number outside the table.</summary>
    public static Datum? TubeWall(double gauge) =>
        Row(gauge) is { } row ? new(_birmingham[row] * Inch,
            "Birmingham wire gauge, as tube is sold by, not checked against the source, published to 0.001 in") : null;

    /// <summary>Thickness of a sheet of that gauge in that metal, mm; null for a number outside the table.</summary>
    public static Datum? Thickness(MaterialFamily family, double gauge)
    {
        if (Row(gauge) is not { } row)
            return null;
        return family switch
        {
            MaterialFamily.Aluminium => new(_aluminium[row] * Inch, "Brown and Sharpe gauge, published to 0.0001 in"),
            MaterialFamily.MildSteel => new(
                _mildSteel[row] * Inch, "Manufacturers' Standard Gauge for steel sheet, published to 0.0001 in"),
            _ => new(
                _stainless[row] * Inch,
                "old United States Standard gauge, published to 0.0001 in; dealers' stainless gauges differ by some hundredths of a mm: "
                    + "measure it"),
        };
    }

    private static int? Row(double gauge) => Numbers.IndexOf((int)gauge) is >= 0 and var row && gauge == (int)gauge ? row : null;
}
