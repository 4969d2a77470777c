using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Why no such vessel exists. A design with a fault is not built.</summary>
/// <param name="Code">One of <see cref="FaultCodes"/>.</param>
/// <param name="Path">The key that is wrong, as <c>ports[0].tube.outside_diameter</c>; empty for the whole file.</param>
/// <param name="What">What is wrong, in words, with the value and the limit where there are any.</param>
/// <param name="Given">The value that was given, with its unit; null where there is none.</param>
/// <param name="Limit">The limit that it breaks, with its unit; null where there is none.</param>
/// <param name="Remedy">What to change.</param>
/// <param name="At">Where in the file; null until the place of <paramref name="Path"/> is looked up.</param>
public sealed record Fault(
    string Code, string Path, string What, string? Given, string? Limit, string Remedy, Span? At = null)
{
    /// <summary>A name in the file that is none of those known where it stands.</summary>
    public static Fault NotFound(string path, string name, string what, IReadOnlyCollection<string> known) => new(
        FaultCodes.PartNotFound, path, $"{what}.", name, null,
        Suggestion.Hint(name, known) ?? (known.Count == 0 ? "There is none: add one." : $"Use one of: {string.Join(", ", known)}."));
}

/// <summary>A value, or the faults that are the reason why there is none. Never both, never neither.</summary>
public sealed record Outcome<T>(T? Value, ImmutableArray<Fault> Faults)
    where T : class
{
    public static implicit operator Outcome<T>(T value) => new(value, []);

    public static implicit operator Outcome<T>(ImmutableArray<Fault> faults) => new(null, faults);
}
