using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>All holes that one pattern makes in a part, without a record for each.</summary>
/// <param name="Purpose">Purpose in words: <c>pattern of lower screen</c>.</param>
/// <param name="Path">The pattern's mapping in the design file.</param>
public sealed record HoleField(string Purpose, Lattice2 Lattice, string Path)
{
    public double Diameter => 2 * Lattice.HoleRadius;

    public HoleMethod Made => HoleMethods.Through(Diameter);
}
