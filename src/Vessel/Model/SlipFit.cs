using System.Collections.Immutable;

namespace Vessel.Model;

/// <summary>A size that a fit hangs on, and by how much it may be off.</summary>
/// <param name="What">Words for what it is: <c>hole in top, laser cut</c>.</param>
/// <param name="Size">mm.</param>
/// <param name="Off">mm of diameter, either way.</param>
public sealed record FitShare(string What, double Size, double Off, string Source)
{
    /// <summary>Whether it is taken up when the parts are put together: it counts at worst alone.</summary>
    public bool IsTakenUp { get; init; }
}

/// <summary>Whether one part goes into another when both are as far off as their processes let them be.</summary>
/// <param name="Name">Name in words: <c>top in shell</c>.</param>
/// <param name="Parts">Ids of the outer and of the inner part.</param>
/// <param name="Clearance">Clearance as drawn, mm of diameter; negative for a press fit.</param>
/// <param name="Path">The key that sets the clearance.</param>
public sealed record SlipFit(
    string Name, ImmutableArray<string> Parts, double Clearance, ImmutableArray<FitShare> Shares, string Path)
{
    /// <summary>All shares off the same way at once, mm.</summary>
    public double WorstSpread => Shares.Sum(share => share.Off);

    /// <summary>Independent shares: the root of the sum of their squares, mm; without what is taken up.</summary>
    public double LikelySpread => Math.Sqrt(Shares.Where(share => !share.IsTakenUp).Sum(share => share.Off * share.Off));

    public double Worst => Clearance - WorstSpread;

    public double Likely => Clearance - LikelySpread;
}
