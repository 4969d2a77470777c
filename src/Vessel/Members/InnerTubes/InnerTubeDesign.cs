using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Members.InnerTubes;

/// <summary>A tube that hangs from a head and keeps what comes in apart from what goes out.</summary>
public sealed record InnerTubeDesign(
    string Path,
    string Name,
    Material Material,
    double OutsideDiameter,
    double Wall,
    double Length,
    VesselEnd HangsFrom,
    Fixing Fixed,
    ImmutableArray<WindowsDesign> Windows) : HangingSpec(Path, Name, Material, Fixed, OutsideDiameter, Wall, HangsFrom)
{
    public override double? BoreLength => Length;

    internal override InsideBody Body(VesselDesign design) =>
        new(Path, Name, [new Ring(InnerRadius, OutsideDiameter / 2, InsideRoom.Ceiling(design) - Length, InsideRoom.Ceiling(design))]);

    public override IEnumerable<string> Ways => Windows.Select((_, row) => WindowRows.NameOf(Name, row)).Prepend($"rim of {Name}");
}
