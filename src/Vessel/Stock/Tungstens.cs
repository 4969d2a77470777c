using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A tungsten electrode with the cup that goes with it.</summary>
/// <param name="Diameter">mm.</param>
/// <param name="Direct">Amps that it carries electrode negative.</param>
/// <param name="Alternating">Amps that it carries on alternating current.</param>
/// <param name="Cup">Number of the gas cup: its bore in sixteenths of an inch.</param>
public sealed record Tungsten(double Diameter, (double Low, double High) Direct, (double Low, double High) Alternating, int Cup)
{
    /// <summary>Number of the cup that a torch has where nothing else is said.</summary>
    private const int Usual = 6;

    /// <summary>Least outside of the cup that it asks for beyond the usual one, mm; zero where that will do.</summary>
    public double CupOutside => Cup <= Usual ? 0 : UsualOutside + ((Cup - Usual) * 25.4 / 16);

    /// <summary>Outside of the usual cup, mm: larger ones are as thick.</summary>
    public const double UsualOutside = 12.5;

    public (double Low, double High) Carries(WeldingCurrent current) => current == WeldingCurrent.Alternating ? Alternating : Direct;
}

/// <summary>Which electrode carries a current.</summary>
public static class Tungstens
{
    public const string Source =
        "amps to 3.2 mm: Air Products, MetFab Welder's Handbook, ceriated, thoriated and lanthanated; of 4.0 mm on AC: Kemppi TTC manual; "
        + "of 4.8 mm on AC: "
        + "Tweco 400 MSTP manual; of both on DC: AWS A5.12, not checked against the source; cups: Lincoln Electric IM528, table 14";

    /// <summary>Amps beyond which a torch that is cooled by air alone does not go. Common practice, no source.</summary>
    public const double AirCooled = 200;

    public static ImmutableArray<Tungsten> All { get; } =
    [
        new(1.0, (15, 80), (20, 60), 5),
        new(1.6, (50, 150), (50, 120), 6),
        new(2.4, (100, 250), (80, 180), 7),
        new(3.2, (200, 400), (160, 250), 8),
        new(4.0, (400, 500), (180, 280), 10),
        new(4.8, (500, 750), (250, 340), 10),
    ];

    /// <summary>
    /// The thinnest that carries the greatest amps of a setting, and the middle ones with a tenth to spare; null where none in the
    /// table does.
    /// </summary>
    public static Tungsten? For(double low, double high, WeldingCurrent current)
    {
        const double Spare = 1.1;
        var needed = Math.Max(high, Spare * (low + high) / 2);
        return All.FirstOrDefault(t => needed <= t.Carries(current).High);
    }
}
