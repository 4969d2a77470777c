using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Heads.FlatHeads;

/// <summary>Where a flat head sits: inside the shell, or on its end.</summary>
public enum Seat
{
    Inset,
    Overlay,
}

/// <summary>A flat plate, welded to the shell at its rim.</summary>
/// <param name="Path">Path as in <see cref="VesselDesign"/>.</param>
/// <param name="Material">Material of the plate.</param>
/// <param name="Wall">Thickness of the plate (the key is <c>thickness</c>).</param>
/// <param name="Seat">Inset or overlay.</param>
/// <param name="Recess">Inset only: how far the outer face lies inside the shell's end.</param>
/// <param name="Clearance">Inset only: radial gap between plate and shell.</param>
/// <param name="OutsideDiameter">Outside diameter of the plate: the shell's bore less twice the clearance when inset; the shell's
/// outside diameter unless given when overlay.</param>
public sealed record FlatHead(
    string Path, Material Material, double Wall, Seat Seat, double Recess, double Clearance, double OutsideDiameter)
    : HeadSpec(Path, Material, Wall)
{
    public override HeadPlate Plate => new(OutsideDiameter, Wall, Seat == Seat.Inset, Seat == Seat.Inset ? Recess + Wall : 0);

    public override ImmutableArray<string> RimParts(VesselEnd end, VesselDesign vessel) => [Names.Of(end)];

    public override string PartOf(PortDesign port, VesselDesign vessel) => Names.Of(port.Host);

    internal override IEnumerable<Fault> Faults(VesselEnd end, VesselDesign design) => LidCheck.Find(design, end, this);

    internal override Head Build(VesselEnd end, VesselDesign vessel, ImmutableArray<PortSite> sites) => new Lid(end, this, vessel, sites);
}
