using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A pattern of round holes in which perforated sheet is sold, rows staggered by 60 degrees; mm.</summary>
/// <param name="Name">Hole and pitch in the usual way.</param>
public sealed record SheetPattern(string Name, double HoleDiameter, double Pitch)
{
    /// <summary>Share of a large sheet that is hole: pi / (2 sqrt 3) (D / C)^2.</summary>
    public double OpenShare => Math.PI / (2 * Math.Sqrt(3)) * HoleDiameter * HoleDiameter / (Pitch * Pitch);
}

/// <summary>Perforated sheet as sold, a help in choosing: any hole and pitch may stand in a design.</summary>
public static class SheetPatterns
{
    public const string Source =
        "R T names after DIN 24041 / ISO 7806 and suppliers' sheets; inch sizes from a supplier's list; open area computed for an endless "
            + "sheet";

    private const double Inch = 25.4;

    public static ImmutableArray<SheetPattern> All { get; } =
    [
        Metric(1, 2), Metric(2, 3.5), Metric(3, 5), Metric(5, 8), Metric(6, 9), Metric(10, 15),
        Inches("1/16 on 1/8 in", 1.0 / 16, 1.0 / 8),
        Inches("1/16 on 7/64 in", 1.0 / 16, 7.0 / 64),
        Inches("5/64 on 7/64 in", 5.0 / 64, 7.0 / 64),
        Inches("5/64 on 1/8 in", 5.0 / 64, 1.0 / 8),
        Inches("3/32 on 5/32 in", 3.0 / 32, 5.0 / 32),
        Inches("1/8 on 3/16 in", 1.0 / 8, 3.0 / 16),
        Inches("5/32 on 7/32 in", 5.0 / 32, 7.0 / 32),
        Inches("3/16 on 1/4 in", 3.0 / 16, 1.0 / 4),
        Inches("1/4 on 5/16 in", 1.0 / 4, 5.0 / 16),
        Inches("1/4 on 3/8 in", 1.0 / 4, 3.0 / 8),
        Inches("3/8 on 9/16 in", 3.0 / 8, 9.0 / 16),
        Inches("1/2 on 11/16 in", 1.0 / 2, 11.0 / 16),
    ];

    private static SheetPattern Metric(double hole, double pitch) =>
        new(FormattableString.Invariant($"R{hole} T{pitch}"), hole, pitch);

    private static SheetPattern Inches(string name, double hole, double pitch) => new(name, hole * Inch, pitch * Inch);
}
