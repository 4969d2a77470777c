using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>
/// A wall that closes an end of the shell, where it stands. Its parts at the rim, and the part that a port stands in, are asked of its
/// spec (<see cref="HeadDesign"/>).
/// </summary>
/// <param name="end">Which end.</param>
/// <param name="name">What the welder calls that end.</param>
internal abstract class Head(VesselEnd end, string name, HeadDesign spec) : Wall(spec.Path, name, spec.Material, spec.Wall)
{
    public VesselEnd End { get; } = end;

    /// <summary>Welds of its own, laid before it closes the shell.</summary>
    public virtual IEnumerable<Joint> Seams => [];

    /// <summary>The weld that closes the shell; null where none does.</summary>
    public abstract Joint? Closing { get; }

    /// <summary>Id of the task that closes its end: the weld, or where none does one of its own tasks, which fits it.</summary>
    /// <param name="welds">All of the vessel's, numbered.</param>
    public string ClosingTask(Welds welds) =>
        Closing is { } weld ? WorkTask.Welding(welds.One(weld.Role, weld.Owner)) : WorkTask.Fitting(Path);

    public override IEnumerable<Joint> Joints => Closing is { } closing ? Seams.Append(closing) : Seams;

    /// <summary>
    /// Its outside as the mock-up has it, drawn as a bottom: from its pole to the outer edge of the shell's end at z = 0. What is between
    /// its edge and the shell's counts as filled.
    /// </summary>
    public abstract Profile Outside { get; }

    /// <summary>Inside of the head, drawn so too: from its pole to where the shell's bore begins; null where walls leave no room.</summary>
    /// <param name="bore">Radius of the bore at the shell's end, mm.</param>
    /// <param name="leastWall">No wall is thinner, mm.</param>
    public abstract Profile? Inside(double bore, double leastWall);

    /// <summary>The largest stress in it under a pressure inside, MPa.</summary>
    /// <param name="pressure">MPa.</param>
    /// <param name="hole">Factor of stress at the edge of a port over what is away from it; 1 where it has none.</param>
    public abstract double Stress(double pressure, double hole);

    /// <summary>
    /// How that is worked out: s from p, K at a port, thickness t, and of a dome its mean diameter D, of a plate its free radius a.
    /// </summary>
    public abstract string StressFormula { get; }

    /// <summary>
    /// Whether it is stressed about twice as much round its axis as along it, as a cylinder is, rather than alike both ways.
    /// </summary>
    public virtual bool IsStressedAsCylinder => false;

    /// <summary>
    /// By how much the middle of a plate stands out under a pressure, mm: with its rim clamped, and with its rim free to turn; null for a
    /// dome, which hardly moves.
    /// </summary>
    /// <param name="pressure">MPa.</param>
    public virtual (double Clamped, double Supported)? Bulge(double pressure) => null;
}
