using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The bolts of a bracket under a force and a moment at their middle; N, mm, MPa.</summary>
/// <remarks>
/// 1/n each, moments over rows (or over half of what bears on the plate where there is one row), torsion by distance; each for the worst
/// direction of the load.
/// </remarks>
/// <param name="Bearing">How wide and how high the plate bears round them, mm.</param>
/// <param name="Load">Load in the plate's directions: X across, Y up, Z along the bolts.</param>
internal sealed record BoltGroup(BoltsDesign Bolts, Point2 Bearing, Wrench Load)
{
    public int Count => CountOf(Bolts);

    public static int CountOf(BoltsDesign bolts) => (bolts.Across > 0 ? 2 : 1) * (bolts.Up > 0 ? 2 : 1);

    /// <summary>Between the outermost two, mm.</summary>
    public static double Spread(BoltsDesign bolts) => Math.Sqrt((bolts.Across * bolts.Across) + (bolts.Up * bolts.Up));

    /// <summary>N in the worst bolt, the worst direction.</summary>
    public double Tension
    {
        get
        {
            // A moment about the axis across is held by rows above each other, one about the axis up by columns.
            var up = Bolts.Up > 0 ? 1 / (Bolts.Up * Count / 2) : 1 / (Bearing.V / 2 * Count);
            var across = Bolts.Across > 0 ? 1 / (Bolts.Across * Count / 2) : 1 / (Bearing.U / 2 * Count);
            return Wrench.Worst(1.0 / Count * Load.Fz, up * Load.Mx, across * Load.My);
        }
    }

    /// <summary>N in the worst bolt, at most.</summary>
    public double Shear
    {
        get
        {
            // All stand equally far from the middle. A single one holds a torsion by friction alone, which is not reckoned.
            var reach = Spread(Bolts) / 2;
            return (SpectralNorm.Of(Load.Fx, Load.Fy) / Count) + (reach > 0 ? Load.Mz.Length / (Count * reach) : 0);
        }
    }

    /// <summary>
    /// Share of what a bolt bears that is taken up, at most; tension and shear each as a share of its own limit, in a square sum.
    /// </summary>
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
