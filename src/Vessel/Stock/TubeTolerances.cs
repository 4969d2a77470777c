using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>
/// By how much a bought tube may be off, mm either way: of its mean diameter, for a tube that is not quite round is pressed round.
/// </summary>
public static class TubeTolerances
{
    private const double Inch = 25.4;

    private const double WallShare = 0.10;

    private const string Stainless = "ASTM A269 " + Sources.StainlessTube;

    private const string Aluminium = "ANSI H35.2, mean diameter of extruded tube " + Sources.AluminiumTube;

    private const string MildSteel = "ASTM A513, as-welded tube, not checked against the source";

    private static readonly ImmutableArray<(double To, double Off)> _stainless = [(38.1, 0.13), (88.9, 0.25), (139.7, 0.38), (203.2, 0.76)];

    private static readonly ImmutableArray<(double To, double Off)> _aluminium =
    [
        (1 * Inch, 0.010 * Inch), (2 * Inch, 0.012 * Inch), (4 * Inch, 0.015 * Inch), (6 * Inch, 0.025 * Inch), (8 * Inch, 0.035 * Inch),
        (10 * Inch, 0.045 * Inch), (12 * Inch, 0.055 * Inch),
    ];

    private static readonly ImmutableArray<(double To, double Off)> _mildSteel =
    [
        (1.125 * Inch, 0.0035 * Inch), (2 * Inch, 0.005 * Inch), (2.5 * Inch, 0.006 * Inch), (3 * Inch, 0.008 * Inch),
        (3.5 * Inch, 0.009 * Inch), (4 * Inch, 0.010 * Inch), (5 * Inch, 0.020 * Inch),
    ];

    /// <summary>Outside diameter. Beyond the last row its value grows in proportion: an estimate.</summary>
    public static Datum Outside(MaterialFamily family, double diameter)
    {
        var (rows, source) = Table(family);
        var row = rows.FirstOrDefault(row => diameter <= row.To, rows[^1]);
        return new(row.Off * Math.Max(1, diameter / rows[^1].To), source);
    }

    /// <summary>Tolerance of the bore by the wall alone, mm of diameter: twice a tenth of the wall.</summary>
    public static Datum BoreByWall(double wall) =>
        new(2 * WallShare * wall,
            "a tenth of the wall: ASTM A269; aluminium and mild steel about the same, not checked against the source");

    /// <summary>Rows for <c>stock</c>.</summary>
    public static IEnumerable<(MaterialFamily Family, double To, double Off, string Source)> All =>
        from family in Enum.GetValues<MaterialFamily>()
        let table = Table(family)
        from row in table.Rows
        select (family, row.To, row.Off, table.Source);

    private static (ImmutableArray<(double To, double Off)> Rows, string Source) Table(MaterialFamily family) => family switch
    {
        MaterialFamily.Stainless => (_stainless, Stainless),
        MaterialFamily.Aluminium => (_aluminium, Aluminium),
        _ => (_mildSteel, MildSteel),
    };
}
