using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Stock;

namespace Vessel.Members.Plates;

/// <summary>A flat plate whose edge is coped to the shell, cut square through its thickness and welded on both sides.</summary>
/// <param name="Offset">Offset of its middle, sideways from the vessel's axis towards increasing angle, mm; the plate keeps its
/// direction.</param>
/// <param name="Roll">About the line outward, radians: 0 lies level, a quarter turn stands upright.</param>
/// <param name="Width">Along the edge that meets the shell, straight across, mm.</param>
/// <param name="FreeWidth">Width of the free edge, mm.</param>
/// <param name="Depth">Length on the plate's middle line from the coped edge to the free one, mm.</param>
/// <param name="Corner">Radius of the free edge's corners, mm; zero for sharp ones.</param>
/// <param name="BoltsAt">Distance on the middle line from the coped edge to the pattern's middle, mm.</param>
public sealed record PlateDesign(
    string Path,
    string Name,
    Material Material,
    double Height,
    double Angle,
    double Offset,
    double Roll,
    double Thickness,
    double Width,
    double FreeWidth,
    double Depth,
    double Corner,
    double BoltsAt,
    BoltsDesign Bolts) : BracketDesign(Path, Name, Material, Height, Angle, Thickness, Bolts)
{
    public override int Edges => 1;

    public override double EdgeLength => Width;

    public override double EdgeLevel(double along, double radius) => new PlateCope(this, radius).Level(along);

    public override (Point2 Middle, Point2 Way) OnEdge(int edge, double along)
    {
        var way = Point2.Polar(1, Roll);
        return (new Point2(0, Height) + new Point2(Offset, 0) + (along * way), way);
    }

    internal override Bracket Build(VesselDesign vessel) => new Plate(this, vessel);
}
