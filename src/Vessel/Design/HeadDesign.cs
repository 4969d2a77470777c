using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What closes one end of the shell, as it was read: all that checks, ports and what stands inside ask of it.</summary>
/// <param name="Path">Path of its mapping in the file.</param>
/// <param name="Wall">Thickness, mm.</param>
public abstract record HeadDesign(string Path, Material Material, double Wall)
{
    /// <summary>The flat plate that it is; null for a wall of revolution.</summary>
    public virtual HeadPlate? Plate => null;

    /// <summary>How far it reaches into the shell from its end, mm.</summary>
    public double Depth => Plate?.Depth ?? 0;

    /// <summary>Faces of the head where it is a wall of revolution; null for a plate, and where a size is at fault.</summary>
    /// <param name="rim">The shell at the end that it closes.</param>
    /// <param name="frame">The head's own; see <see cref="HeadShape"/>.</param>
    /// <param name="tip">Radius at which the port at its pole cuts a tip off, mm; zero without one.</param>
    public virtual HeadShape? Shape(ShellSection rim, Frame3 frame, double tip) => null;

    /// <summary>Whether a port of the shell may stand over its seam as well, so that one hole goes through both.</summary>
    public virtual bool CarriesOverSeam => false;

    /// <summary>Whether it has a tip that a port at its pole must close.</summary>
    public virtual bool IsClosedByPort => false;

    /// <summary>How much wider the hole in its tip is outside than inside, of the radius, mm; zero where it has no tip.</summary>
    public virtual double TipEdge => 0;

    /// <summary>Ids of all its parts that are welded to the shell, in order round it.</summary>
    public abstract ImmutableArray<string> RimParts(VesselEnd end, VesselDesign vessel);

    /// <summary>Id of the part that one of its ports stands in; of several that meet at its tip a first one.</summary>
    public abstract string PartOf(PortDesign port, VesselDesign vessel);

    /// <summary>What makes its own shape impossible, and ports in it that stand where they may not.</summary>
    internal virtual IEnumerable<Fault> Faults(VesselEnd end, VesselDesign design) => [];
}
