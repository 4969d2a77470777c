using Vessel.Design;

namespace Vessel.Model;

/// <summary>A level plate that parts a room in two, as the room sees it.</summary>
/// <param name="MetalArea">Area of its faces, without what is open in them, mm2.</param>
/// <param name="HoleEdges">Length of the edges of what is open in it, but for its middle bore, mm.</param>
/// <param name="Holes">Where those edges lie; null where nothing is open in it but that bore.</param>
internal sealed record Partition(DividerSpec Spec, double MetalArea, double HoleEdges, OpeningShape? Holes)
{
    public double Height => Spec.Height;

    public double Thickness => Spec.Thickness;
}
