using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed chain of lines and circular arcs that stands for an exact loop.</summary>
/// <param name="Vertices">In the loop's direction; the last leads back to the first.</param>
/// <param name="Deviation">Greatest distance between chain and loop, mm; zero for lines and arcs, which are kept.</param>
public sealed record FittedLoop(ImmutableArray<Bulge> Vertices, double Deviation);

/// <summary>A vertex and the way to the next one.</summary>
/// <param name="At">mm.</param>
/// <param name="Value">Tangent of a quarter of the arc's sweep, positive counter-clockwise; zero for a line.</param>
public readonly record struct Bulge(Point2 At, double Value);
