using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A tungsten electrode with the cup that goes with it.</summary>
/// <param name="Diameter">mm.</param>
/// <param name="Direct">Amps that it carries electrode negative.</param>
/// <param name="Alternating">Amps that it carries on alternating current.</param>
/// <param name="Cup">Number of the gas cup: its bore in sixteenths of an inch.</param>
public sealed record Tungsten(double Diameter, (double Low, double High) Direct, (double Low, double High) Alternating, int Cup);

/// <summary>Which electrode carries a current.</summary>
public static class Tungstens
{
    public const string Source =
        "amps: Air Products, MetFab Welder's Handbook, ceriated, thoriated and lanthanated; cups: Lincoln Electric IM528, table 14";

    public static ImmutableArray<Tungsten> All { get; } =
    [
        new(1.0, (15, 80), (20, 60), 5),
        new(1.6, (50, 150), (50, 120), 6),
        new(2.4, (100, 250), (80, 180), 7),
        new(3.2, (200, 400), (160, 250), 8),
    ];

    /// <summary>The thinnest that carries the current with a tenth to spare; the thickest where none does.</summary>
    public static Tungsten For(double amps, bool alternating)
    {
        const double Spare = 1.1;
        return All.FirstOrDefault(t => Spare * amps <= (alternating ? t.Alternating : t.Direct).High) ?? All[^1];
    }
}
