using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Findings;

public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>A shape that exists but is ill-advised.</summary>
/// <param name="Code">One of <see cref="FindingCodes"/>.</param>
/// <param name="Parts">Ids of the parts concerned.</param>
/// <param name="Message">The weak point of the design, by how much, and what to change.</param>
/// <param name="Place">The design's key that it goes back to; null where it is none's alone.</param>
public sealed record Finding(
    string Code, Severity Severity, ImmutableArray<string> Parts, string Message, ImmutableArray<FindingFigure> Figures, KeyPlace? Place)
{
    /// <summary>Where that key stands in the file.</summary>
    public Span? At => Place?.Span;

    /// <summary>The reason that the file gives for taking it; null when it is not accepted.</summary>
    public string? AcceptedBecause { get; init; }
}

/// <summary>A figure behind a finding. <paramref name="Limit"/> is null where there is none.</summary>
public sealed record FindingFigure(string Name, double Value, double? Limit, string Unit);
