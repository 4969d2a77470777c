namespace Vessel.Design;

/// <summary>A figure that nobody can know exactly: its range and what it rests on.</summary>
public readonly record struct Estimate(double Low, double Likely, double High, string Basis);
