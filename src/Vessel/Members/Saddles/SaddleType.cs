using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Members.Saddles;

/// <summary>Brackets that are bent from one sheet: a back plate and two ears.</summary>
internal sealed class SaddleType : BracketType
{
    public override string Word => "saddle";

    public override string What => "the bracket";

    public override ImmutableArray<Key> Keys { get; } =
    [
        new("at", KeyKind.Mapping,
            "Where its middle is") { IsRequired = true, Map = new("the place of a bracket", [BracketKeys.Height, CommonKeys.Angle]) },
        new("thickness", KeyKind.Length, "Of the sheet") { IsRequired = true, Range = CommonKeys.Wall },
        new("width", KeyKind.Length, "Over all, round the shell") { IsRequired = true, Range = CommonKeys.Diameter },
        new("height", KeyKind.Length, "Over all upward") { IsRequired = true, Range = CommonKeys.Diameter },
        new("stand_off", KeyKind.Length, "From the shell's outside to the plate's back, where they are nearest")
        {
            IsRequired = true, Range = new(0, 1000),
        },
        new("ears", KeyKind.Choice, "Which edges are bent towards the shell: left and right, or top and bottom")
        {
            Choices = ["sides", "ends"], Default = "sides",
        },
        new("inside_radius", KeyKind.Length, "Of the bends")
        {
            DefaultRule = "the thickness, or more where the metal's table asks for more", Range = new(0, 100),
        },
        new("k", KeyKind.Ratio, "Place of a bend's neutral line, as a share of the thickness from the inside")
        {
            DefaultRule = "the shop's: 0.41 for aluminium and mild steel, 0.45 for stainless", Range = CommonKeys.NeutralLine,
        },
        new("bolts", KeyKind.Mapping, "In the plate") { IsRequired = true, Map = new("the bolts of a bracket", BracketKeys.Bolts) },
    ];

    public override BracketDesign Read(Section section, Section at, Shop shop)
    {
        var (metal, thickness) = (section.Metal, section.Number("thickness"));
        return new SaddleDesign(
            section.Path,
            section.Text("name") ?? string.Empty,
            metal,
            at.Number("height"),
            Turns.From(at.Number("angle"), 0),
            thickness,
            // Which edges are bent is not known while the ears are at fault.
            section.Has("ears") ? section.Number("width") : double.NaN,
            section.Has("ears") ? section.Number("height") : double.NaN,
            section.Number("stand_off"),
            section.Text("ears") == "ends" ? SaddleEars.Ends : SaddleEars.Sides,
            section.NumberOr("inside_radius", thickness > 0 ? Math.Max(thickness, BendRadii.Least(metal, thickness).Value) : double.NaN),
            section.NumberOr("k", shop.BendLines[metal.Family]),
            BoltsDesign.Under(section));
    }

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) => SaddleCheck.Find(design, sites);
}
