using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A straight length of TIG filler; mm.</summary>
public sealed record Rod(string Name, double Diameter, double Length)
{
    /// <summary>Mass of one whole rod of that alloy, grams.</summary>
    public double Mass(Filler filler) => Math.PI / 4 * Diameter * Diameter * Length * filler.Density / 1000;
}

/// <summary>Filler rods as sold, and how much of one becomes weld.</summary>
public static class Rods
{
    public const string Source = "36 in straight lengths, as sold [practice]";

    public const string StubSource = "[practice] 2 to 3 in of 36 are thrown away";

    private const double Inch = 25.4;

    public static ImmutableArray<Rod> All { get; } =
    [
        new("1/16 in (1.6 mm)", Inch / 16, 36 * Inch),
        new("3/32 in (2.4 mm)", Inch * 3 / 32, 36 * Inch),
        new("1/8 in (3.2 mm)", Inch / 8, 36 * Inch),
    ];

    /// <summary>Share of the melted rod that stays in the weld.</summary>
    public static Datum DepositEfficiency { get; } = new(0.98, "supplier's hard-facing deposit table, bare TIG rod");

    /// <summary>
    /// The rod for a wall (the thinner of two), mm: 1/16 in to 2 mm, 3/32 in below 4 mm, 1/8 in from there. Within
    /// the ranges of CK Worldwide Form 116 for aluminium; the steels' tables agree up to 3.2 mm.
    /// </summary>
    public static Rod RecommendedFor(double wall) => wall <= 2 ? All[0] : wall < 4 ? All[1] : All[2];
}
