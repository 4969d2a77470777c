using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>A figure with everything that it rests on. All its numbers are finite.</summary>
/// <param name="Name">Unique in a vessel, as <c>explain</c> takes it: <c>gas-loss</c>.</param>
/// <param name="Symbol">As in its formula; empty where it has none.</param>
/// <param name="Title">In words, with a small letter.</param>
/// <param name="Unit">Of its value; empty for a plain number.</param>
/// <param name="Formula">In plain text.</param>
/// <param name="Source">Of the formula.</param>
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
/// <param name="Symbol">As in the formula.</param>
/// <param name="From">Where the value comes from: <c>flow.temperature</c>, a table, another figure.</param>
public sealed record FigureInput(string Symbol, string Title, Amount Value, string Unit, string From);

/// <summary>Where a formula holds.</summary>
/// <param name="Range">In words.</param>
/// <param name="Holds">The figure's inputs lie inside.</param>
public sealed record Validity(string Range, bool Holds)
{
    /// <summary>By definition, or exact.</summary>
    public static Validity Always { get; } = new("always", true);
}
