using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Members.Screens;

/// <summary>A perforated disc that fits an inner tube, or the shell.</summary>
public sealed record ScreenDesign(
    string Path,
    string Name,
    Material Material,
    string? Fits,
    double Height,
    double Thickness,
    double Clearance,
    Fixing Fixed,
    double Bore,
    double OutsideDiameter,
    HolePatternDesign Holes)
    : DividerSpec(Path, Name, Material, Fits, Height, Thickness, Clearance, Fixed, Bore, OutsideDiameter)
{
    internal override IEnumerable<DrilledField> Patterns(VesselDesign design) => [new(Holes, Name, OutsideDiameter / 2, Bore / 2)];
}
