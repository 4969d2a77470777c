namespace Vessel.Stock;

/// <summary>A figure of the shop's day that nobody can look up exactly; a shop file may give its own.</summary>
/// <param name="Name">The key in the shop file.</param>
/// <param name="What">One line for the user.</param>
/// <param name="Unit">Unit of the three figures: <c>min</c>, <c>mm/min</c>, or a share.</param>
/// <param name="Likely">The default.</param>
/// <param name="Source">Where it comes from, in words for the report.</param>
public sealed record WorkRate(string Name, string What, string Unit, double Low, double Likely, double High, string Source);
