using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Members.Brackets;

/// <summary>What the vessel is bolted up by, welded to the shell.</summary>
/// <param name="Height">Height of its middle, mm in the vessel's frame.</param>
/// <param name="Angle">Round the vessel of its middle, radians.</param>
/// <param name="Thickness">Thickness of the sheet, mm.</param>
public abstract record BracketDesign(
    string Path, string Name, Material Material, double Height, double Angle, double Thickness, BoltsDesign Bolts) : MemberSpec(Path, Name)
{
    /// <summary>Null for edges without.</summary>
    public TabsDesign? Tabs { get; init; }

    /// <summary>How many of its edges meet the shell.</summary>
    public abstract int Edges { get; }

    /// <summary>Length of an edge that meets the shell, straight across, mm.</summary>
    public abstract double EdgeLength { get; }

    /// <summary>
    /// How wide and how high the flat is that its bolts' washers must lie on, mm; infinite where its own check knows the room.
    /// </summary>
    public virtual Point2 Flat => new(double.PositiveInfinity, double.PositiveInfinity);

    public override IEnumerable<ShellSlot> Slots => ShellTab.Of(this).Select(tab => tab.Slot);

    /// <summary>
    /// From the vessel's axis along the line outward to an edge, coped to a cylinder of that radius, at a place along the edge, mm; NaN
    /// beside the cylinder.
    /// </summary>
    public abstract double EdgeLevel(double along, double radius);

    /// <summary>
    /// A place on one of its edges: sideways of its line outward and height, mm in the vessel's frame, and the edge's unit direction in
    /// them.
    /// </summary>
    /// <param name="edge">Number of the edge from 0, as their welds are numbered.</param>
    /// <param name="along">Distance from the edge's middle, mm.</param>
    public abstract (Point2 Middle, Point2 Way) OnEdge(int edge, double along);

    /// <summary>Where it stands.</summary>
    internal abstract Bracket Build(VesselDesign vessel);
}
