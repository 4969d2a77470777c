namespace Vessel.Model;

/// <summary>What the bench is told of a weld beside its figures.</summary>
/// <param name="FitUp">Where its parts are set before they are tacked, with its own stop at the end; empty where neighbours place
/// them.</param>
public sealed record JointWords(string FitUp)
{
    /// <summary>What to heed, lest it warps.</summary>
    public required string Heed { get; init; }

    /// <summary>What to look at once it is cold; null for what is looked at in most welds.</summary>
    public string? Check { get; init; }

    /// <summary>Where a leak is looked for along a weld that closes no wall, as it follows the weld's name; null where none is.</summary>
    public string? Leaks { get; init; }

    /// <summary>What to change where a torch does not reach it; null for what helps most welds outside.</summary>
    public string? Remedy { get; init; }
}
