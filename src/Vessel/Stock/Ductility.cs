using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>How far a sheet metal stretches before it tears, and whether it is sold too hard for dishing and spinning.</summary>
public static class Ductility
{
    private const string Kutz = "typical, 1.6 mm sheet: Kutz, Handbook of Materials Selection, ch. 4, table 5";
    private const string Remembered = "typical, 1.6 mm sheet, not checked against the source";

    /// <summary>Share of the elongation that cold forming may use up. Common practice, no source.</summary>
    public const double FormingShare = 0.5;

    /// <summary>Named as <see cref="Material.Name"/>; a share of the gauge length, not a percentage.</summary>
    private static readonly ImmutableArray<(string Material, double Elongation, string Source)> _table =
    [
        ("aluminium 6061-O", 0.25, Remembered),
        ("aluminium 6061-T4", 0.22, Remembered),
        ("aluminium 6061-T6", 0.12, Remembered),
        ("aluminium 5052-O", 0.25, Remembered),
        ("aluminium 5052-H32", 0.12, Remembered),
        ("aluminium 5052-H34", 0.10, Remembered),
        ("aluminium 5052-H36", 0.08, Remembered),
        ("aluminium 5052-H38", 0.07, Remembered),
        ("aluminium 3003-O", 0.30, Kutz),
        ("aluminium 3003-H12", 0.10, Kutz),
        ("aluminium 3003-H14", 0.08, Kutz),
        ("aluminium 3003-H16", 0.05, Kutz),
        ("aluminium 3003-H18", 0.04, Kutz),
        ("aluminium 5083-O", 0.16, "least of sheet, EN 485-2 (not checked against the source)"),
        ("aluminium 5754-O", 0.18, "least of sheet, EN 485-2 (not checked against the source)"),
        ("aluminium 6082-O", 0.14, "least of sheet, EN 485-2 (not checked against the source)"),
        ("aluminium 1050-O", 0.25, "least of sheet, EN 485-2 (not checked against the source)"),
        ("stainless 304", 0.40, "least of annealed sheet, ASTM A240, not checked against the source"),
        ("stainless 316", 0.40, "least of annealed sheet, ASTM A240, not checked against the source"),
        ("steel S235", 0.19, "least of sheet from 1.5 to 2 mm, EN 10025-2 (not checked against the source)"),
        ("mild steel", 0.28, "least of drawing quality DC01, EN 10130, not checked against the source"),
    ];

    /// <summary>
    /// Elongation at break as a share. Aluminium without a temper in its name counts as annealed; a temper that the
    /// table does not hold gives null.
    /// </summary>
    public static Datum? Elongation(Material material)
    {
        var name = material.Family switch
        {
            MaterialFamily.Aluminium when Temper(material).Length == 0 => $"{material.Name}-O",
            MaterialFamily.Stainless => material.Name.TrimEnd('L'),
            _ => material.Name,
        };
        return _table.Where(row => row.Material == name).Select(row => new Datum(row.Elongation, row.Source)).FirstOrDefault();
    }

    /// <summary>
    /// Hardened by heat treatment (T) or by rolling (H, but for H111 and H112, which are barely harder than annealed).
    /// Common practice, no source.
    /// </summary>
    public static bool IsHard(Material material) =>
        Temper(material) is { Length: > 0 } temper && temper[0] != 'O' && temper is not ("H111" or "H112");

    /// <summary>Temper as in the name: <c>T6</c>; empty when none is named.</summary>
    private static string Temper(Material material) =>
        material.Name.IndexOf('-', StringComparison.Ordinal) is >= 0 and var dash ? material.Name[(dash + 1)..] : string.Empty;
}
