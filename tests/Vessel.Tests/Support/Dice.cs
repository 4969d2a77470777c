namespace Vessel.Tests.Support;

/// <summary>The same throws for the same seed.</summary>
internal sealed class Dice(int seed)
{
    // Not for secrets: the same seed must give the same design.
#pragma warning disable CA5394
    private readonly Random _random = new(seed);

    public double Between(double low, double high) => low + (_random.NextDouble() * (high - low));

    public bool Chance(double share) => _random.NextDouble() < share;

    public int Pick(int count) => _random.Next(count);
#pragma warning restore CA5394
}
