using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;

namespace Vessel.Members.Plates;

/// <summary>Brackets that are one flat plate, which stands on the shell.</summary>
internal sealed class PlateType : BracketType
{
    public override string Word => "plate";

    public override string What => "a plate that stands on the shell";

    public override ImmutableArray<Key> Keys { get; } =
    [
        new("at", KeyKind.Mapping, "Where its middle is") { IsRequired = true, Map = Place },
        new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
        new("width", KeyKind.Length, "Across the edge that is coped to the shell") { IsRequired = true, Range = CommonKeys.Diameter },
        new("depth", KeyKind.Length, "On the middle line, from the coped edge to the free one")
        {
            IsRequired = true, Range = CommonKeys.Diameter,
        },
        new("free_width", KeyKind.Length, "Of the free edge; the sides lean where it differs")
        {
            DefaultRule = "the width", Range = CommonKeys.Diameter,
        },
        new("corner", KeyKind.Length, "Radius of the free edge's corners; 0 for sharp ones")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("bolts", KeyKind.Mapping, "In the plate") { IsRequired = true, Map = Bolts },
    ];

    private static KeyMap Place => new("the place of a plate",
    [
        BracketKeys.Height,
        CommonKeys.Angle,
        new("offset", KeyKind.Length, "Sideways towards increasing angle; the plate keeps its direction")
        {
            Default = "0 mm", Range = new(-10_000, 10_000),
        },
        new("roll", KeyKind.Angle, "About the line outward: 0 lies level, 90 stands upright")
        {
            Default = "0 deg", Range = new(-90, 90),
        },
    ]);

    private static KeyMap Bolts => new("the bolts of a plate",
    [
        .. BracketKeys.Bolts.Select(key => key.Name switch
        {
            "across" => key with { Description = "From middle to middle along the coped edge; 0 for one column" },
            "up" => key with { Description = "From middle to middle away from the shell; 0 for one row" },
            "slot" => key with { Description = "Length of slot away from the shell beyond the round hole; 0 for round holes" },
            _ => key,
        }),
        new("from_shell", KeyKind.Length, "On the plate's middle line, from the coped edge to the middle of the bolts")
        {
            DefaultRule = "half the depth", Range = CommonKeys.FromZero,
        },
    ]);

    public override BracketDesign Read(Section section, Section at, Shop shop)
    {
        var (width, depth) = (section.Number("width"), section.Number("depth"));
        var bolts = section.Child("bolts") ?? Section.Absent($"{section.Path}.bolts");
        return new PlateDesign(
            section.Path,
            section.Text("name") ?? string.Empty,
            section.Metal,
            at.Number("height"),
            Turns.From(at.Number("angle"), 0),
            at.Number("offset"),
            at.Number("roll"),
            section.Number("thickness"),
            width,
            section.NumberOr("free_width", width),
            depth,
            section.Number("corner"),
            bolts.NumberOr("from_shell", depth / 2),
            BoltsDesign.Under(section));
    }

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) => PlateCheck.Find(design, sites);
}
