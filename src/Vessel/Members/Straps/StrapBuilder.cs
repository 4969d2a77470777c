using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Members.Straps;

/// <summary>Fills the straps' records from their sections; see <see cref="MemberKind.Read"/>.</summary>
internal static class StrapBuilder
{
    public static StrapDesign Build(Section section, Shop shop)
    {
        var at = section.Child("at") ?? Section.Absent($"{section.Path}.at");
        var feet = section.Child("feet") ?? Section.Absent($"{section.Path}.feet");
        var (metal, thickness) = (section.Metal, section.Number("thickness"));
        return new(
            section.Path,
            section.Text("name") ?? string.Empty,
            metal,
            at.Number("height"),
            Turns.From(at.Number("angle"), 0),
            thickness,
            section.Number("width"),
            section.Number("gap"),
            section.Number("liner"),
            section.Number("ear"),
            section.NumberOr("inside_radius", thickness > 0 ? Math.Max(thickness, BendRadii.Least(metal, thickness).Value) : double.NaN),
            section.NumberOr("k", shop.BendLines[metal.Family]),
            BoltsDesign.Under(section),
            new(feet.Path, feet.Number("length"), feet.Given.Contains("stand_off") ? feet.Number("stand_off") : null,
                BoltsDesign.Under(feet)));
    }
}
