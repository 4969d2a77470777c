namespace Vessel.Design;

/// <summary>For which ways of standing and in which steps the capacity is worked out.</summary>
/// <param name="GreatestLean">Radians; zero for upright alone.</param>
/// <param name="LeanStep">Between one lean and the next, radians.</param>
/// <param name="Directions">Evenly round, the first to the front.</param>
/// <param name="Sideways">Steady sideways acceleration as a share of gravity; zero for none.</param>
/// <param name="TableStep">Between the levels of the gauge table, mm.</param>
public sealed record CapacityDesign(
    string Path, double GreatestLean, double LeanStep, int Directions, double Sideways, double TableStep)
{
    /// <summary>Name of the rule book that says what it must hold; null for none.</summary>
    public string? Rule { get; init; }

    /// <summary>Hours of running; zero where nothing is asked.</summary>
    public double BetweenDrains { get; init; }

    /// <summary>What holds where the file says nothing.</summary>
    public static CapacityDesign Usual { get; } = new("capacity", Math.PI / 6, Math.PI / 12, 8, 0, 10);
}
