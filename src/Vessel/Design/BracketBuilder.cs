using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills the bracket's record from its section; see <see cref="DesignBuilder"/>.</summary>
internal static class BracketBuilder
{
    /// <summary>Of the one bracket, for file names.</summary>
    public const string Name = "bracket";

    public static BracketDesign Build(Section section, Shop shop)
    {
        var at = section.Child("at") ?? Section.Absent($"{section.Path}.at");
        var metal = DesignBuilder.Metal(section);
        var thickness = section.Number("thickness");
        return new BracketDesign(
            section.Path,
            Name,
            metal,
            at.Number("height"),
            Turns.From(at.Number("angle"), 0),
            thickness,
            // Which edges are bent is not known while the ears are at fault.
            section.Has("ears") ? section.Number("width") : double.NaN,
            section.Has("ears") ? section.Number("height") : double.NaN,
            section.Number("stand_off"),
            section.Text("ears") == "ends" ? BracketEars.Ends : BracketEars.Sides,
            section.NumberOr("inside_radius", thickness),
            section.NumberOr("k", shop.BendLines[metal.Family]),
            Bolts(section.Child("bolts") ?? Section.Absent($"{section.Path}.bolts")));
    }

    private static BoltsDesign Bolts(Section section)
    {
        var diameter = section.Number("diameter");
        return new BoltsDesign(
            section.Path,
            diameter,
            section.Number("across"),
            section.Number("up"),
            section.Number("slot"),
            Stock.Bolts.Hole(diameter).Value,
            Stock.Bolts.Washer(diameter).Value);
    }
}
