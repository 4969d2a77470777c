using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>What a metal bears next to a weld, and how it gives and grows; MPa and 1/K.</summary>
/// <param name="Material">Name without temper.</param>
/// <param name="Elasticity">Young's modulus, MPa.</param>
/// <param name="Poisson">Contraction across over stretch along.</param>
/// <param name="Growth">Per kelvin.</param>
/// <param name="Yield">As welded: next to a weld the temper is gone.</param>
/// <param name="WeldShear">Allowable on the throat of a fillet in its usual filler.</param>
public sealed record Strength(
    string Material, double Elasticity, double Poisson, double Growth, double Yield, double WeldShear, string Source);

/// <summary>Strengths of the metals of <see cref="Materials"/>.</summary>
public static class Strengths
{
    /// <summary>MPa in a ksi.</summary>
    public const double Ksi = 6.894757;

    private const string Steel = "throat 0.30 of the filler's strength (AISC ASD, AWS D1.1: from memory)";

    private const string Aluminium = "throat: least shear strength of the filler over 1.95 (Aluminum Design Manual, AWS D1.2: from memory)";

    public static ImmutableArray<Strength> All { get; } =
    [
        new("aluminium 6061", 68_900, 0.33, 23.6e-6, 15 * Ksi, 11.5 * Ksi / 1.95,
            $"E and growth: Callister; yield as welded 15 ksi (Aluminum Design Manual: from memory; AlcoTec typical 18); {Aluminium}"),
        new("aluminium 5052", 70_300, 0.33, 23.8e-6, 14 * Ksi, 17 * Ksi / 1.95,
            $"E and growth: from memory; yield as welded 14 ksi (AlcoTec Technical Guide); {Aluminium}"),
        new("aluminium 3003", 69_000, 0.33, 23.2e-6, 7 * Ksi, 11.5 * Ksi / 1.95,
            $"E and growth: from memory; yield as welded 7 ksi (AlcoTec Technical Guide); {Aluminium}"),
        new("stainless 304", 193_000, 0.29, 17.3e-6, 205, 0.30 * 75 * Ksi,
            $"E and growth: Callister; yield of annealed sheet 205 MPa (ASTM A240: from memory); {Steel}, 75 ksi"),
        new("stainless 316", 193_000, 0.29, 16.0e-6, 205, 0.30 * 75 * Ksi,
            $"E and growth: from memory; yield of annealed sheet 205 MPa (ASTM A240: from memory); {Steel}, 75 ksi"),
        new("mild steel", 205_000, 0.29, 11.7e-6, 220, 0.30 * 70 * Ksi,
            $"E, growth and yield of hot-rolled 1018: from memory; {Steel}, 70 ksi"),
    ];

    /// <summary>Of a metal, whatever its temper.</summary>
    public static Strength Of(Material material) =>
        All.First(strength => material.Name.StartsWith(strength.Material, StringComparison.Ordinal));
}

/// <summary>What metric bolts bear.</summary>
public static class BoltStrength
{
    public const string Source = "stress area pi / 4 (d - 0.9382 P)^2, coarse pitches of ISO 261; proof 450 MPa: A2-70 of ISO 3506 (from memory)";

    /// <summary>Of A2-70, MPa; 8.8 bears 580 to 600.</summary>
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
