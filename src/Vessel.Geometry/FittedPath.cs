using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A chain of lines and circular arcs that stands for one curve.</summary>
/// <param name="Vertices">Vertices from the curve's start on; of an open curve the last one is its end, of a closed one it leads back to
/// the
/// first.</param>
/// <param name="IsClosed">Whether the curve ends where it begins.</param>
/// <param name="Deviation">Greatest distance between chain and curve, mm; zero for a line or an arc, which is kept.</param>
public sealed record FittedPath(ImmutableArray<Bulge> Vertices, bool IsClosed, double Deviation);
