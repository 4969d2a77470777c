using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills the brackets' records from their sections; by the same rule as the whole design.</summary>
internal static class BracketBuilder
{
    public static ImmutableArray<BracketDesign> Build(Section file, Shop shop) =>
        [.. file.Items("bracket").Where(section => section.Has("kind")).Select(section => One(section, shop))];

    private static BracketDesign One(Section section, Shop shop)
    {
        var at = section.Child("at") ?? Section.Absent($"{section.Path}.at");
        BracketDesign bracket = section.Text("kind") == "plate" ? Plate(section, at) : Saddle(section, at, shop);
        return section.Child("tabs") is { } tabs
            ? bracket with { Tabs = new(tabs.Path, tabs.Has("count") ? (int)tabs.Number("count") : 0, tabs.Number("width"), tabs.Number("clearance")) }
            : bracket;
    }

    private static SaddleBracket Saddle(Section section, Section at, Shop shop)
    {
        var metal = section.Metal;
        var thickness = section.Number("thickness");
        return new(
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
            section.Text("ears") == "ends" ? BracketEars.Ends : BracketEars.Sides,
            section.NumberOr("inside_radius", thickness > 0 ? Math.Max(thickness, BendRadii.Least(metal, thickness).Value) : double.NaN),
            section.NumberOr("k", shop.BendLines[metal.Family]),
            Bolts(section));
    }

    private static PlateBracket Plate(Section section, Section at)
    {
        var (width, depth) = (section.Number("width"), section.Number("depth"));
        var bolts = section.Child("bolts") ?? Section.Absent($"{section.Path}.bolts");
        return new(
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
            Bolts(section));
    }

    /// <summary>Those under a bracket, or whatever else is bolted; what the mapping has no key for is zero.</summary>
    internal static BoltsDesign Bolts(Section bracket)
    {
        var section = bracket.Child("bolts") ?? Section.Absent($"{bracket.Path}.bolts");
        var diameter = section.Number("diameter");
        return new BoltsDesign(
            section.Path,
            diameter,
            section.NumberOr("across", 0),
            section.Number("up"),
            section.Number("slot"),
            Stock.Bolts.Hole(diameter).Value,
            Stock.Bolts.Washer(diameter).Value);
    }
}
