namespace Vessel.Design;

/// <summary>A key that a finding goes back to.</summary>
/// <param name="Path">Path such as <c>inside.discs[0].clearance</c>; empty for the whole file.</param>
/// <param name="Span">Where it stands, or the nearest key above it where it is left out; null outside of any file.</param>
public sealed record KeyPlace(string Path, Span? Span);
