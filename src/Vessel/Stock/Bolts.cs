using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>What a plate needs for a metric bolt.</summary>
/// <param name="Diameter">Diameter of the bolt, mm.</param>
/// <param name="Hole">Clearance hole, mm.</param>
/// <param name="Washer">Outside of a plain washer, mm.</param>
public sealed record BoltSize(double Diameter, double Hole, double Washer);

/// <summary>Clearance holes and washers.</summary>
public static class Bolts
{
    public const string HoleSource = "ISO 273, medium series, not checked against the source";

    public const string WasherSource = "ISO 7089, plain washers, not checked against the source";

    public const string OtherSource = "[practice] hole 1.1 and washer 2 times the bolt";

    public static ImmutableArray<BoltSize> All { get; } =
    [
        new(3, 3.4, 7), new(4, 4.5, 9), new(5, 5.5, 10), new(6, 6.6, 12), new(8, 9, 16), new(10, 11, 20),
        new(12, 13.5, 24), new(14, 15.5, 28), new(16, 17.5, 30), new(20, 22, 37), new(24, 26, 44),
    ];

    /// <summary>Diameter of the hole for a bolt, mm.</summary>
    public static Datum Hole(double bolt) =>
        Find(bolt) is { } size ? new(size.Hole, HoleSource) : new(1.1 * bolt, OtherSource);

    /// <summary>Outside diameter of the washer under a bolt's head, mm.</summary>
    public static Datum Washer(double bolt) =>
        Find(bolt) is { } size ? new(size.Washer, WasherSource) : new(2 * bolt, OtherSource);

    private static BoltSize? Find(double bolt) => All.FirstOrDefault(s => s.Diameter == bolt);
}
