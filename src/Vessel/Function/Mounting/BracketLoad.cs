using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>
/// What the full vessel does to one of its brackets, as if it hung on that one alone, under an acceleration that may come from
/// any side; N, mm, MPa.
/// </summary>
/// <remarks>
/// F = m a acts at the centre of the full vessel. Welds: two lines of length L and throat a, D apart: area 2 L a, moduli L D a
/// apart and L^2 a / 3 along. Several brackets share the load by how stiff each is and how its bolts were set; that each bears
/// all of it is the bound that needs neither.
/// </remarks>
internal abstract record BracketLoad(Weight Full, double Acceleration, double WeldLength, double Throat)
{
    public static BracketLoad Of(BracketDesign bracket, Assembly assembly, Weight full) => bracket switch
    {
        SaddleBracket saddle => SaddleLoad.Of(saddle, assembly, full),
        PlateBracket plate => PlateLoad.Of(plate, assembly, full),
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };

    public abstract BracketDesign Design { get; }

    /// <summary>What is bent between shell and bolts, and its welds, in words.</summary>
    public abstract (string Member, string Welds) Words { get; }

    /// <summary>N.</summary>
    public double Force => Full.Mass * 1e-3 * Acceleration * Air.Gravity;

    public abstract BoltGroup Group { get; }

    public int BoltCount => Group.Count;

    /// <summary>The centre of mass from the middle of the bolts.</summary>
    public Vector3 Arm => Group.Arm;

    public double BoltTension => Group.Tension;

    public double BoltShear => Group.Shear;

    public double BoltShare => Group.Share;

    /// <summary>Between the two welds, mm.</summary>
    public abstract double WeldsApart { get; }

    /// <summary>From the middle of the welds to the centre of mass, mm.</summary>
    public abstract double WeldReach { get; }

    /// <summary>MPa on the throats, at most.</summary>
    public double WeldStress
    {
        get
        {
            var modulus = Math.Min(WeldLength * WeldsApart * Throat, WeldLength * WeldLength * Throat / 3);
            return Force * ((1 / (2 * WeldLength * Throat)) + (WeldReach / modulus));
        }
    }

    /// <summary>MPa in what is bent between shell and bolts.</summary>
    public abstract Amount MemberStress { get; }

    /// <summary>The figure that says so.</summary>
    public abstract Figure MemberMargin(FigureInput force, StrengthOfMember metal, Validity statics);

    /// <summary>The figure of the first natural frequency.</summary>
    public abstract Figure FrequencyFigure(double elasticity);

    /// <summary>mm by which the holes move apart when the vessel warms and what it is bolted to does not.</summary>
    public double Growth(double perKelvin, double kelvins) => perKelvin * Math.Abs(kelvins) * Group.Spread;

    /// <summary>mm that the holes give all together: two holes' clearance.</summary>
    public double Play => Design.Bolts.HoleDiameter - Design.Bolts.Diameter;

    protected FigureInput MassInput => new("M", "mass, full", Full.Mass / 1000, "kg", "mass-full");
}

/// <summary>What a bracket's metal bears in bending, MPa, and where that is from.</summary>
internal readonly record struct StrengthOfMember(double Yield, string Source);
