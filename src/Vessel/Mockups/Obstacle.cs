using System.Collections.Immutable;

namespace Vessel.Mockups;

/// <summary>Why no mock-up can be made in one clean solid.</summary>
/// <param name="Parts">Ids of the parts concerned.</param>
/// <param name="What">Words for what it is, for the user; they end without a stop.</param>
/// <param name="Distance">Between the two that come too near, mm; null where it is not about a distance.</param>
/// <param name="Path">The design's mapping that it goes back to.</param>
public sealed record Obstacle(ImmutableArray<string> Parts, string What, double? Distance, string Path)
{
    /// <summary>Footprints and bodies keep at least this apart, mm.</summary>
    public const double Least = 0.2;
}
