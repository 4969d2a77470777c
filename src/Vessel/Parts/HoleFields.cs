using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A pattern of equal holes as a lattice in a plate round the origin.</summary>
public static class HoleFields
{
    /// <summary>Pattern of as many whole holes as the margin allows: the phase of the pattern is chosen for that.</summary>
    /// <param name="outerRadius">Outer radius of the plate, mm.</param>
    /// <param name="boreRadius">Radius of an opening in its middle, mm; zero for none.</param>
    public static Lattice2 Of(HolePatternDesign pattern, double outerRadius, double boreRadius)
    {
        var within = new Annulus2(outerRadius, boreRadius, pattern.Margin);
        var radius = pattern.HoleDiameter / 2;
        return pattern.Pattern switch
        {
            HolePattern.Staggered60 => GridLattice2.Fullest(GridKind.Staggered60, within, radius, pattern.Pitch),
            HolePattern.Staggered45 => GridLattice2.Fullest(GridKind.Staggered45, within, radius, pattern.Pitch),
            HolePattern.Square => GridLattice2.Fullest(GridKind.Square, within, radius, pattern.Pitch),
            HolePattern.Rings => new RingLattice2(within, radius, pattern.Pitch),
            _ => throw new ArgumentException($"no such pattern: {pattern.Pattern}"),
        };
    }
}
