using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>A figure with everything that it rests on. All its numbers are finite.</summary>
/// <param name="Name">Unique in a vessel, as <c>explain</c> takes it: <c>gas-loss</c>.</param>
/// <param name="Symbol">Symbol as in its formula; empty where it has none.</param>
/// <param name="Title">Title in words, with a small letter.</param>
/// <param name="Unit">Unit of its value; empty for a plain number.</param>
/// <param name="Formula">Formula in plain text.</param>
/// <param name="Source">Source of the formula.</param>
public sealed record Figure(
    string Name,
    string Symbol,
    string Title,
    Amount Value,
    string Unit,
    string Formula,
    ImmutableArray<FigureInput> Inputs,
    string Source,
    Validity Validity);

/// <summary>A value that a figure is worked out from.</summary>
/// <param name="Symbol">Symbol as in the formula.</param>
/// <param name="From">Where the value comes from: <c>flow.temperature</c>, a table, another figure.</param>
public sealed record FigureInput(string Symbol, string Title, Amount Value, string Unit, string From);

/// <summary>Where a formula holds.</summary>
/// <param name="Range">Range in words.</param>
/// <param name="Holds">The figure's inputs lie inside.</param>
public sealed record Validity(string Range, bool Holds)
{
    /// <summary>Range of what holds by definition, or is exact.</summary>
    public static Validity Always { get; } = new("always", true);
}
