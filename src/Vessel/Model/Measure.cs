using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Model;

/// <summary>One thing that a rule looks at, whether or not all is well with it.</summary>
/// <remarks>
/// Findings are the measures that do not hold; margins are those that have a figure with a limit and say what it is a figure of. A rule
/// whose condition is no number, as that a metal touches another, gives a measure without a limit, and only where it does not hold: so
/// every rule returns the same thing, and its condition stands in one place.
/// </remarks>
/// <param name="Code">One of the codes of findings.</param>
/// <param name="Beyond">How much it matters that the aim is missed; past the last that is taken it is one step more.</param>
/// <param name="Parts">Ids of the parts concerned.</param>
/// <param name="Words">Makes the sentence that is said when the measure does not hold: the weak point, by how much, and what to
/// change.</param>
/// <param name="Figures">Those with a limit decide whether the measure holds.</param>
/// <param name="Place">The design's key that it goes back to, exactly; null where it is none's alone.</param>
/// <param name="Of">What the first figure is a figure of, in the table of margins; null for a measure that is no row of it.</param>
public sealed record Measure(
    string Code, Severity Beyond, ImmutableArray<string> Parts, Func<string> Words, ImmutableArray<Measured> Figures, KeyPlace? Place,
    string? Of = null)
{
    /// <summary>The reason that the file gives for taking what does not hold; null when it is not accepted.</summary>
    public string? AcceptedBecause { get; init; }

    public bool Holds => Figures.Any(figure => figure.Limit is not null) && Figures.All(figure => figure.Holds);

    /// <summary>How much it matters that the measure does not hold.</summary>
    public Severity Severity => Figures.Any(figure => figure.Limit?.IsGrave(figure.Value) ?? false) ? Beyond + 1 : Beyond;

    /// <summary>What is said when the measure does not hold.</summary>
    public string Message => Words();

    /// <summary>Where the key stands in the file.</summary>
    public Span? At => Place?.Span;
}
