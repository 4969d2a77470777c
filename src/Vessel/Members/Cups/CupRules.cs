using Vessel.Design;
using Vessel.Findings;
using static Vessel.Model.Allowed;

namespace Vessel.Members.Cups;

/// <summary>What a cup does to liquid.</summary>
internal static class CupRules
{
    private const double CubicMillimetresPerMillilitre = 1000;

    public static IEnumerable<Measure> Of(CupDesign cap, VesselDesign design) =>
        cap is { Opens: CupOpening.Up, DrainHole: 0, Pattern: null } ? [Trapped(cap, design)] : [];

    /// <summary>A cup fills to its lowest way out: the windows' sills, or its rim.</summary>
    private static Measure Trapped(CupDesign cap, VesselDesign design)
    {
        var radius = (cap.OutsideDiameter / 2) - cap.Wall;
        var volume = Math.PI * radius * radius * cap.Windows.Select(row => row.Up).Append(cap.Skirt).Min() / CubicMillimetresPerMillilitre;
        return new(
            FindingCodes.TrappedOil,
            Severity.Warning,
            [CupParts.Ids(cap).Plate],
            () => $"'{cap.Name}' opens up and has no drain: it holds {NoteText.Length(volume)} ml of {design.Flow.Liquid.Word} that cannot "
            + "run back and that the gas "
            + "carries off; give it a drain_hole of 3 mm or more, or let it open down.",
            [new("trapped", volume, AtMost(0), "ml")],
            design.PlaceOf($"{cap.Path}.opens"));
    }
}
