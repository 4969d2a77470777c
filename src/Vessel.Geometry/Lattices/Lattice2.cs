namespace Vessel.Geometry;

/// <summary>
/// Equal round holes placed by rule in a ring-shaped plate round the origin: only whole holes that keep the margin. The
/// holes are never listed; they follow from a few numbers. A closed set: <see cref="GridLattice2"/>,
/// <see cref="RingLattice2"/>.
/// </summary>
public abstract record Lattice2
{
    /// <summary>A hole that rounding puts so far beyond the margin still counts, mm.</summary>
    private const double Slack = 1e-9;

    /// <param name="within">The plate that is perforated.</param>
    /// <param name="holeRadius">mm.</param>
    /// <param name="pitch">Least distance of centres, mm; more than the holes' diameter.</param>
    /// <exception cref="ArgumentException">Holes that touch each other or an edge: a solid would not hang together.</exception>
    private protected Lattice2(Annulus2 within, double holeRadius, double pitch)
    {
        if (!(holeRadius > 0 && pitch > 2 * holeRadius && within.Margin > 0))
            throw new ArgumentException($"holes of radius {holeRadius} at a pitch of {pitch} with a margin of {within.Margin} touch");
        (Within, HoleRadius, Pitch) = (within, holeRadius, pitch);
    }

    public Annulus2 Within { get; }

    public double HoleRadius { get; }

    public double Pitch { get; }

    /// <summary>Least metal between a hole and another or an edge, mm.</summary>
    public double Web => Math.Min(Pitch - (2 * HoleRadius), Within.Margin);

    public abstract int Count { get; }

    /// <summary>Area of all holes, mm2.</summary>
    public double Area => Count * Math.PI * HoleRadius * HoleRadius;

    /// <summary>Perimeter of all holes, mm.</summary>
    public double Length => Count * 2 * Math.PI * HoleRadius;

    /// <summary>Least distance of a centre from the origin; below zero where there is no bore.</summary>
    internal double Least => Within.Inner > 0 ? Within.Inner + Within.Margin + HoleRadius - Slack : -1;

    /// <summary>Greatest distance of a centre from the origin.</summary>
    internal double Most => Within.Outer - Within.Margin - HoleRadius + Slack;

    /// <summary>The centres, worked out one by one, always in the same order.</summary>
    public abstract IEnumerable<Point2> Centers();
}

/// <summary>The room between two circles round the origin.</summary>
/// <param name="Outer">Radius of the plate's edge, mm.</param>
/// <param name="Inner">Radius of the bore, mm; zero for none.</param>
/// <param name="Margin">Metal that stays between a hole and either edge, mm; more than zero.</param>
public readonly record struct Annulus2(double Outer, double Inner, double Margin);
