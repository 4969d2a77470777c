using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The bolts of a bracket under a force of any direction at the centre of the full vessel; N, mm, MPa.</summary>
/// <remarks>
/// Per unit of force the tension of the worst bolt is linear in the direction, so that over all directions it is at most the
/// length of that vector; shear is bounded by the sum of what force and moment do at their worst. 1/n each, moments over rows
/// (or over half of what bears on the plate where there is one row), torsion by distance.
/// </remarks>
/// <param name="Arm">The centre of mass from the middle of the bolts: X across, Y up, Z along them.</param>
/// <param name="Bearing">How wide and how high the plate bears round them, mm.</param>
internal sealed record BoltGroup(BoltsDesign Bolts, Vector3 Arm, Point2 Bearing, double Force)
{
    public int Count => (Bolts.Across > 0 ? 2 : 1) * (Bolts.Up > 0 ? 2 : 1);

    /// <summary>Between the outermost two, mm.</summary>
    public double Spread => Math.Sqrt((Bolts.Across * Bolts.Across) + (Bolts.Up * Bolts.Up));

    /// <summary>N in the worst bolt, the worst direction.</summary>
    public double Tension
    {
        get
        {
            // A moment about the axis across is held by rows above each other, one about the axis up by columns.
            var up = Bolts.Up > 0 ? 1 / (Bolts.Up * Count / 2) : 1 / (Bearing.V / 2 * Count);
            var across = Bolts.Across > 0 ? 1 / (Bolts.Across * Count / 2) : 1 / (Bearing.U / 2 * Count);
            var pull = (1.0 / Count) + (Math.Abs(Arm.Y) * up) + (Math.Abs(Arm.X) * across);
            var (lift, side) = (Math.Abs(Arm.Z) * up, Math.Abs(Arm.Z) * across);
            return Force * Math.Sqrt((pull * pull) + (lift * lift) + (side * side));
        }
    }

    /// <summary>N in the worst bolt, at most.</summary>
    public double Shear
    {
        get
        {
            // All stand equally far from the middle. A single one holds a torsion by friction alone, which is not reckoned.
            var reach = Spread / 2;
            var aside = Math.Sqrt((Arm.X * Arm.X) + (Arm.Y * Arm.Y));
            return Force * ((1.0 / Count) + (reach > 0 ? aside / (Count * reach) : 0));
        }
    }

    /// <summary>Of what a bolt bears, at most; each bound in a square sum.</summary>
    public double Share
    {
        get
        {
            var area = BoltStrength.Area(Bolts.Diameter);
            var (tension, shear) = (Tension / (area * BoltStrength.Proof), Shear / (area * BoltStrength.Proof * BoltStrength.ShearShare));
            return Math.Sqrt((tension * tension) + (shear * shear));
        }
    }
}
