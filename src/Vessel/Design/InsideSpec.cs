using Vessel.Stock;

namespace Vessel.Design;

/// <summary>How an internal part is held.</summary>
public enum Fixing
{
    Weld,
    Tabs,
    Screws,
    Press,
    Loose,
}

/// <summary>A member that stands inside, coaxial with the shell.</summary>
public abstract record InsideSpec(string Path, string Name, Material Material, Fixing Fixed) : MemberSpec(Path, Name)
{
    /// <summary>Whether a bead or tacks hold it.</summary>
    public virtual bool IsWelded => Fixed == Fixing.Weld;

    /// <summary>The rings of which it is made up; not numbers where a size is at fault.</summary>
    internal abstract InsideBody Body(VesselDesign design);

    /// <summary>All that stands inside, in the order of the file.</summary>
    internal static IEnumerable<InsideBody> BodiesIn(VesselDesign design) => design.All<InsideSpec>().Select(spec => spec.Body(design));

    /// <summary>Whether another is what it fits: pressed in, it is wider than that one's bore on purpose.</summary>
    internal virtual bool StandsIn(InsideSpec other) => false;

    /// <summary>What is said where it takes up the place of something named before it.</summary>
    /// <param name="other">Null for a port's tube.</param>
    internal virtual Fault Clash(UnitFormat shown, InsideBody own, InsideSpec? other, InsideBody body) => new(
        FaultCodes.PartsCollide, Path, $"'{body.Name}' and '{Name}' take up the same place.", null, null,
        "Move one of the two, or make one smaller.");

    /// <summary>Names of the ways through it, as the order of the gas's flow names them.</summary>
    public virtual IEnumerable<string> Ways => [];

    /// <summary>Patterns of holes that are drilled in it.</summary>
    internal virtual IEnumerable<DrilledField> Patterns(VesselDesign design) => [];
}

/// <summary>A pattern and what it is drilled in.</summary>
/// <param name="Name">Name of what is drilled.</param>
/// <param name="Outer">Radius of what is drilled, mm.</param>
/// <param name="Opening">Radius of the opening in its middle, mm; zero for none.</param>
internal sealed record DrilledField(HolePatternDesign Holes, string Name, double Outer, double Opening);
