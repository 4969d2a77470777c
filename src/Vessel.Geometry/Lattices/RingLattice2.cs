using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// Holes on concentric rings a pitch apart, each ring with as many as keep the pitch, and one in the middle where there
/// is no bore. The outermost ring keeps just the margin: rings as far out as can be hold most.
/// </summary>
public sealed record RingLattice2(Annulus2 Within, double HoleRadius, double Pitch) : Lattice2(Within, HoleRadius, Pitch)
{
    /// <summary>Rounding allowed where the last gap of a ring is just a pitch, or a ring lies just a pitch from the middle.</summary>
    private const double Rounding = 1e-9;

    public override int Count => Rings().Sum(ring => ring.Count);

    /// <summary>Ring by ring inward, each counter-clockwise from angle 0.</summary>
    public override IEnumerable<Point2> Centers()
    {
        foreach (var ring in Rings())
        {
            for (var i = 0; i < ring.Count; i++)
                yield return Point2.Polar(ring.Radius, ring.AngleOf(i));
        }
    }

    /// <summary>Rings from the outermost inward; a hole in the middle is a ring of radius 0.</summary>
    internal ImmutableArray<HoleRing> Rings()
    {
        var rings = ImmutableArray.CreateBuilder<HoleRing>();
        var innermost = Least >= 0 ? Least : Pitch - Rounding;
        var outermost = Within.Outer - Within.Margin - HoleRadius;
        for (var k = 0; outermost - (k * Pitch) is var radius && radius >= innermost; k++)
            rings.Add(new(radius, MostOn(radius)));
        if (Least < 0 && outermost >= 0)
            rings.Add(new(0, 1));
        return rings.ToImmutable();
    }

    /// <summary>Neighbours n to a ring stand 2 radius sin(pi / n) apart.</summary>
    private int MostOn(double radius) => Pitch > 2 * radius
        ? 1
        : (int)Math.Floor((Math.PI / Math.Asin(Pitch / (2 * radius))) + Rounding);
}

/// <summary>Holes evenly round a circle.</summary>
internal readonly record struct HoleRing(double Radius, int Count)
{
    public double AngleOf(int hole) => Turns.Full * hole / Count;
}
