using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>What a metal bears next to a weld, and how it gives and grows; MPa and 1/K.</summary>
/// <param name="Material">Name without temper.</param>
/// <param name="Elasticity">Young's modulus, MPa.</param>
/// <param name="Poisson">Contraction across over stretch along.</param>
/// <param name="Growth">Per kelvin.</param>
/// <param name="Yield">Yield as welded: next to a weld the temper is gone, whatever it was.</param>
/// <param name="Tensile">Tensile strength as welded.</param>
/// <param name="YieldSource">Source of yield and strength: a least value or a usual one, and where it is from.</param>
/// <param name="StiffnessSource">Source of elasticity and growth.</param>
public sealed record Strength(
    string Material, double Elasticity, double Poisson, double Growth, double Yield, double Tensile, string YieldSource,
    string StiffnessSource)
{
    public string Source => $"{StiffnessSource}; {YieldSource}";
}

/// <summary>Strengths of the metals of <see cref="Materials"/>, and of the low-carbon grades that are weaker than they.</summary>
/// <remarks>
/// Aluminium counts as what the weld's heat leaves of any temper: least values of the annealed temper, of 6061 the least of a welded
/// T6. A name without a temper is therefore no special case. Typical values of groove welds lie above them: 14, 7 and 18 ksi
/// yield (AlcoTec Technical Guide).
/// </remarks>
public static class Strengths
{
    /// <summary>MPa in a ksi.</summary>
    public const double Ksi = 6.894757;

    private const string Remembered = "E and growth not checked against a source";

    private const string Callister = "E and growth: Callister";

    private const string Eurocode = "beside a weld, EN 1999-1-1 table 3.2 (not checked against the source)";

    private const string A240 = "least of annealed sheet, ASTM A240";

    public static ImmutableArray<Strength> All { get; } =
    [
        new("aluminium 6061", 68_900, 0.33, 23.6e-6, 15 * Ksi, 24 * Ksi,
            "yield 15 ksi, least of welded T6 (Aluminum Design Manual, not checked against the source)", Callister),
        new("aluminium 5052", 70_300, 0.33, 23.8e-6, 9.5 * Ksi, 25 * Ksi,
            "yield 9.5 ksi, least of temper O (Aluminum Design Manual, not checked against the source)", Remembered),
        new("aluminium 3003", 69_000, 0.33, 23.2e-6, 5 * Ksi, 14 * Ksi,
            "yield 5 ksi, least of temper O (Aluminum Design Manual, not checked against the source)", Remembered),
        new("aluminium 5083", 70_000, 0.33, 24.2e-6, 125, 270, $"yield 125 MPa, {Eurocode}", Remembered),
        new("aluminium 5754", 70_000, 0.33, 23.8e-6, 80, 190, $"yield 80 MPa, {Eurocode}", Remembered),
        new("aluminium 6082", 70_000, 0.33, 23.4e-6, 125, 185, $"yield 125 MPa, {Eurocode} (T6)", Remembered),
        new("aluminium 1050", 69_000, 0.33, 23.6e-6, 20, 65, $"yield 20 MPa, {Eurocode}", Remembered),
        new("stainless 304", 193_000, 0.29, 17.3e-6, 205, 515, $"yield 205 MPa, {A240} (not checked against the source)", Callister),
        new("stainless 304L", 193_000, 0.29, 17.3e-6, 170, 485, $"yield 170 MPa, {A240}", Callister),
        new("stainless 316", 193_000, 0.29, 16.0e-6, 205, 515, $"yield 205 MPa, {A240} (not checked against the source)", Remembered),
        new("stainless 316L", 193_000, 0.29, 16.0e-6, 170, 485, $"yield 170 MPa, {A240}", Remembered),
        new("mild steel", 205_000, 0.29, 11.7e-6, 220, 400,
            "yield 220 MPa, usual for hot-rolled 1018, no least value: look at the certificate (not checked against the source)",
            Remembered),
        new("steel S235", 210_000, 0.3, 12e-6, 235, 360, "yield 235 MPa, to 16 mm, EN 10025-2 (not checked against the source)",
            "E and growth: EN 1993-1-1, 3.2.6, not checked against the source"),
    ];

    /// <summary>Strength of a metal, whatever its temper; the L of a stainless grade is its own.</summary>
    public static Strength Of(Material material) =>
        All.Where(strength => material.Name.StartsWith(strength.Material, StringComparison.Ordinal))
            .MaxBy(strength => strength.Material.Length)!;
}

/// <summary>What metric bolts bear.</summary>
public static class BoltStrength
{
    public const string Source = "stress area pi / 4 (d - 0.9382 P)^2, coarse pitches of ISO 261; proof 450 MPa: A2-70 of ISO 3506 (not "
        + "checked against the source)";

    /// <summary>Proof stress of A2-70, MPa; 8.8 bears 580 to 600.</summary>
    public const double Proof = 450;

    /// <summary>Shear over tension. Common practice, no source.</summary>
    public const double ShearShare = 0.6;

    private static readonly ImmutableArray<(double Diameter, double Pitch)> _coarse =
    [
        (3, 0.5), (4, 0.7), (5, 0.8), (6, 1), (8, 1.25), (10, 1.5), (12, 1.75), (14, 2), (16, 2), (20, 2.5), (24, 3),
    ];

    /// <summary>mm2; a bolt that is not in the table is taken as coarse as its nearest.</summary>
    public static double Area(double diameter)
    {
        var (listed, pitch) = _coarse.MinBy(size => Math.Abs(size.Diameter - diameter));
        var core = diameter - (0.9382 * pitch * diameter / listed);
        return Math.PI / 4 * core * core;
    }
}
