namespace Vessel.Planning;

/// <summary>Sheet of one metal and thickness, and what is cut from it.</summary>
/// <param name="Nest">Nest on sheets as they are sold.</param>
/// <param name="Rectangle">
/// The same pieces in the smallest rectangle found, as a sheet of its own: what a one-off needs of a remnant; null where one
/// sheet does not hold them all.
/// </param>
public sealed record SheetStock(Nest Nest, Nest? Rectangle);
