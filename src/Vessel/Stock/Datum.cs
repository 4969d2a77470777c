namespace Vessel.Stock;

/// <summary>A figure with where it comes from, in words for the report.</summary>
public sealed record Datum(double Value, string Source);
