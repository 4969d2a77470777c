using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Lattices by the name of their pattern, for theories.</summary>
internal static class Fields
{
    public static Lattice2 Of(string kind, Annulus2 within, double holeRadius, double pitch) => kind == "Rings"
        ? new RingLattice2(within, holeRadius, pitch)
        : GridLattice2.Fullest(Enum.Parse<GridKind>(kind), within, holeRadius, pitch);

    /// <summary>The round plate that a lattice perforates.</summary>
    public static Region2 Plate(Lattice2 field) => new(
        Loop2.Circle(default, field.Within.Outer),
        field.Within.Inner > 0 ? [Loop2.Circle(default, field.Within.Inner, clockwise: true)] : [])
    {
        Fields = [field],
    };
}
