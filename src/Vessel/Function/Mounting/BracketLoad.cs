using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>What the full vessel does to its bracket under an acceleration that may come from any side; N, mm, MPa.</summary>
/// <remarks>
/// F = m a acts at the centre of the full vessel. Per unit of force the tension of the worst bolt is linear in the
/// direction, so that over all directions it is at most the length of that vector; shear and weld stress are bounded by
/// the sum of what force and moment do at their worst. Bolts: 1/n each, moments over rows (or over the plate's half where
/// there is one row), torsion by distance. Welds: two lines of length L and throat a, D apart: area 2 L a, moduli L D a
/// apart and L^2 a / 3 along. Ears: the force half on each; built in at plate and shell they bend as a frame, M = F L / 4, at
/// worst as cantilevers, M = F L / 2.
/// </remarks>
internal sealed record BracketLoad(BracketSite Site, Weight Full, double Acceleration, double WeldLength, double Throat)
{
    public static BracketLoad? Of(Assembly assembly, Weight full)
    {
        if (assembly.Design.Bracket is not { } bracket)
            return null;
        var weld = assembly.Welds.First(w => w.Joint.Path == WeldNumbers.EarsOf(bracket)[0]);
        return new(BracketSite.Of(bracket, assembly.Design), full, assembly.Design.Mounting.Acceleration, weld.Length, weld.Joint.Throat);
    }

    public BracketDesign Bracket => Site.Bracket;

    /// <summary>N.</summary>
    public double Force => Full.Mass * 1e-3 * Acceleration * Air.Gravity;

    public int BoltCount => Site.BoltPlaces.Length;

    /// <summary>The centre of mass from the middle of the plate's outer face: X along the girth, Y up, Z out of the vessel.</summary>
    public Vector3 Arm => Site.Way.ToLocal(Full.Centre) - new Vector3(0, 0, Site.BackLevel + Bracket.Thickness);

    /// <summary>N in the worst bolt, the worst direction.</summary>
    public double BoltTension
    {
        get
        {
            var bolts = Bracket.Bolts;
            var arm = Arm;
            // A moment about the level axis is held by rows above each other, one about the upright axis by columns.
            var up = bolts.Up > 0 ? 1 / (bolts.Up * BoltCount / 2) : 1 / (Bracket.PlateHeight / 2 * BoltCount);
            var across = bolts.Across > 0 ? 1 / (bolts.Across * BoltCount / 2) : 1 / (Bracket.Width / 2 * BoltCount);
            var pull = (1.0 / BoltCount) + (Math.Abs(arm.Y) * up) + (Math.Abs(arm.X) * across);
            var (lift, side) = (Math.Abs(arm.Z) * up, Math.Abs(arm.Z) * across);
            return Force * Math.Sqrt((pull * pull) + (lift * lift) + (side * side));
        }
    }

    /// <summary>N in the worst bolt, at most.</summary>
    public double BoltShear
    {
        get
        {
            var middle = Site.Middle;
            var reach = Site.BoltPlaces.Max(at => (at - middle).Length);
            var polar = Site.BoltPlaces.Sum(at => (at - middle).Length * (at - middle).Length);
            var aside = Math.Sqrt((Arm.X * Arm.X) + (Arm.Y * Arm.Y));
            // A single bolt holds a torsion by friction alone, which is not reckoned.
            return Force * ((1.0 / BoltCount) + (polar > 0 ? aside * reach / polar : 0));
        }
    }

    /// <summary>MPa, at most; each bound of what the bolt bears in a square sum.</summary>
    public double BoltShare
    {
        get
        {
            var area = BoltStrength.Area(Bracket.Bolts.Diameter);
            var (tension, shear) = (BoltTension / (area * BoltStrength.Proof), BoltShear / (area * BoltStrength.Proof * BoltStrength.ShearShare));
            return Math.Sqrt((tension * tension) + (shear * shear));
        }
    }

    /// <summary>MPa on the throats, at most.</summary>
    public double WeldStress
    {
        get
        {
            var (length, apart) = (WeldLength, Site.Overall);
            var arm = Site.Way.ToLocal(Full.Centre) - new Vector3(0, 0, Site.ShellRadius);
            var reach = arm.Length;
            var modulus = Math.Min(length * apart * Throat, length * length * Throat / 3);
            return Force * ((1 / (2 * length * Throat)) + (reach / modulus));
        }
    }

    /// <summary>From the shell to the plate, mm: at most, where the ear's end follows the shell.</summary>
    public double EarLength => Site.BackLevel - Site.EarEnd;

    /// <summary>MPa in the ears, bent about their thin side: as a frame, and at most as cantilevers.</summary>
    public Amount EarStress
    {
        get
        {
            var modulus = Site.BendLength * Bracket.Thickness * Bracket.Thickness / 6;
            var frame = Force * EarLength / 4 / modulus;
            return new(frame, frame, 2 * frame);
        }
    }

    /// <summary>Hz: ears as two leaves, built in at both ends (high), at one (low); the shell that gives is not in it.</summary>
    public Amount Frequency(double elasticity)
    {
        var inertia = Site.BendLength * Math.Pow(Bracket.Thickness, 3) / 12;
        // N/mm is 1000 N/m.
        double Hertz(double ends) => Math.Sqrt(
            1000 * 2 * ends * elasticity * inertia / Math.Pow(EarLength, 3) / (Full.Mass * 1e-3)) / Turns.Full;
        return new(Hertz(3), Hertz(6), Hertz(12));
    }

    /// <summary>mm by which the holes move apart when the vessel warms and what it is bolted to does not.</summary>
    public double Growth(double perKelvin, double kelvins)
    {
        var bolts = Bracket.Bolts;
        return perKelvin * Math.Abs(kelvins) * Math.Sqrt((bolts.Across * bolts.Across) + (bolts.Up * bolts.Up));
    }

    /// <summary>mm that the holes give all together: two holes' clearance.</summary>
    public double Play => Bracket.Bolts.HoleDiameter - Bracket.Bolts.Diameter;
}
