using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Inside;

namespace Vessel.Members.Screens;

/// <summary>A screen in its bore.</summary>
internal sealed class Screen(ScreenDesign spec, VesselDesign vessel) : Divider(spec, vessel)
{
    protected override Part Part(double play, Welds welds) => ScreenPart.Build(Looser(play), welds);

    protected override double HoleEdges(Part part) =>
        part.Fields[0].Lattice is var lattice ? Turns.Full * lattice.HoleRadius * lattice.Count : 0;

    protected override OpeningShape? Holes(Part part) => part.Fields[0].Lattice is { Count: > 0 } lattice
        ? new HolesEdge([.. lattice.Centers()], lattice.HoleRadius, spec.Height, spec.Height + spec.Thickness)
        : null;

    /// <summary>Slips into its bore with more room all round; its holes stay where they are.</summary>
    private ScreenDesign Looser(double by)
    {
        // Holes keep half of their distance from the rim at least.
        var taken = Math.Min(by, spec.Holes.Margin / 2);
        return spec with
        {
            Clearance = spec.Clearance + taken,
            OutsideDiameter = spec.OutsideDiameter - (2 * taken),
            Holes = spec.Holes with { Margin = spec.Holes.Margin - taken },
        };
    }
}
