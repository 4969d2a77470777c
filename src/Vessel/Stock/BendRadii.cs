using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>
/// Least inside radii of cold quarter-turn bends. Published tables disagree by up to two, and shops often go tighter; they
/// are a warning, not a law.
/// </summary>
public static class BendRadii
{
    private const double Inch = 25.4;

    private const string Association = "Aluminum Association radii in multiples of the thickness, as printed in the BJG design book";

    private const string InchTable = "inch table of least bend radii in the BJG design book";

    private const string Practice = "[practice] one thickness";

    private const string BendTest =
        "ASTM A480 bend test of annealed austenitic sheet: over 1 t to 3/8 in (not checked against the source), over 2 t to 1 in";

    private const double BendTestOfOne = 3 * Inch / 8;

    private static readonly ImmutableArray<double> _fractions = [Inch / 32, Inch / 16, Inch / 8, Inch * 3 / 16, Inch / 4];

    private static readonly ImmutableArray<double> _decimals = [0.040 * Inch, 0.063 * Inch, 0.090 * Inch, 0.125 * Inch];

    /// <summary>Alloy and temper, with radii as multiples of the thickness, row by row.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new("aluminium 5052-O", _fractions, [0, 0, 0.5, 1, 1], Association),
        new("aluminium 5052-H32", _fractions, [0, 1, 1.5, 1.5, 1.5], Association),
        new("aluminium 6061-T6", _fractions, [1, 1.5, 2.5, 3, 3.5], Association),
        new("aluminium 6061-T4", _fractions, [0, 1, 1.5, 2.5, 3], Association),
        new("aluminium 3003-H14", _fractions, [0, 0, 1, 1, 1.5],
            $"{Association}; row of 1100-H14, taken for 3003-H14, not checked against the source"),
        new("mild steel", _decimals, Multiples(0.094, 0.094, 0.125, 0.188), $"{InchTable}, 1020/1025 steel"),
    ];

    private static readonly Row _soft =
        new("aluminium, temper O", _decimals, Multiples(0.063, 0.063, 0.094, 0.125), $"{InchTable}, aluminium of temper O");

    /// <summary>
    /// Least inside radius, mm: linear in the multiple of the thickness between the table's rows, its end rows beyond them.
    /// An alloy named without its temper is taken in the one it is usually sold in; what no table holds may be bent to one
    /// thickness.
    /// </summary>
    public static Datum Least(Material material, double thickness)
    {
        // Annealed, as it is sold; older shop tables for aircraft ask for 2 t.
        if (material.Family == MaterialFamily.Stainless)
            return new((thickness > BendTestOfOne ? 2 : 1) * thickness, BendTest);
        var name = material.Name switch
        {
            "aluminium 6061" => "aluminium 6061-T6",
            "aluminium 5052" => "aluminium 5052-H32",
            "aluminium 3003" => "aluminium 3003-H14",
            var other => other,
        };
        var row = _rows.FirstOrDefault(r => r.Name == name) ?? (name.EndsWith("-O", StringComparison.Ordinal) ? _soft : null);
        if (row is null)
            return new(thickness, Practice);
        var usual = name.StartsWith(material.Name + "-", StringComparison.Ordinal)
            ? $"; temper not given, taken as {name[(material.Name.Length + 1)..]}" : string.Empty;
        return new(row.Multiple(thickness) * thickness, row.Source + usual);
    }

    private static ImmutableArray<double> Multiples(params ReadOnlySpan<double> inches)
    {
        var multiples = ImmutableArray.CreateBuilder<double>(inches.Length);
        for (var i = 0; i < inches.Length; i++)
            multiples.Add(inches[i] * Inch / _decimals[i]);
        return multiples.MoveToImmutable();
    }

    private sealed record Row(string Name, ImmutableArray<double> Thicknesses, ImmutableArray<double> Multiples, string Source)
    {
        public double Multiple(double thickness)
        {
            var at = Math.Clamp(thickness, Thicknesses[0], Thicknesses[^1]);
            var i = 0;
            while (i + 2 < Thicknesses.Length && at > Thicknesses[i + 1])
                i++;
            var share = (at - Thicknesses[i]) / (Thicknesses[i + 1] - Thicknesses[i]);
            return Multiples[i] + (share * (Multiples[i + 1] - Multiples[i]));
        }
    }
}
