using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What the internals do to oil and gas.</summary>
internal static class InsideRules
{
    private const double CubicMillimetresPerMillilitre = 1000;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        foreach (var cap in assembly.Design.Inside.Caps)
        {
            if (cap is { Opens: CapOpening.Up, DrainHole: 0, Pattern: null })
                yield return Trapped(cap, assembly.Design);
        }

        if (Blocked(assembly) is { } blocked)
            yield return blocked;
    }

    /// <summary>A cup fills to its lowest way out: the windows' sills, or its rim.</summary>
    private static Measure Trapped(CapDesign cap, VesselDesign design)
    {
        var radius = (cap.OutsideDiameter / 2) - cap.Wall;
        var volume = Math.PI * radius * radius * cap.Windows.Select(row => row.Up).Append(cap.Skirt).Min() / CubicMillimetresPerMillilitre;
        return new(
            FindingCodes.TrappedOil,
            Severity.Warning,
            [CapParts.Ids(cap).Plate],
            () => $"'{cap.Name}' opens up and has no drain: it holds {NoteText.Length(volume)} ml of {design.Flow.Liquid.Word} that cannot run back and that the gas "
            + "carries off; give it a drain_hole of 3 mm or more, or let it open down.",
            [new("trapped", volume, AtMost(0), "ml")],
            design.PlaceOf($"{cap.Path}.opens"));
    }

    private static Measure? Blocked(Assembly assembly)
    {
        var path = GasPath.At(assembly.Cavity, double.NegativeInfinity);
        if (path.OpenPorts.Length < 2 || path.ConnectedPairs > 0)
            return null;
        var ports = string.Join(" and ", path.OpenPorts.Select(port => port.Name));
        return new(
            FindingCodes.GasPathBlocked,
            Severity.Error,
            [.. path.OpenPorts.Select(port => Slug.Of(port.Name))],
            () => $"gas has no way between {ports}: give the cap windows, or leave the sleeve's rim free.",
            [],
            assembly.Design.PlaceOf("inside"));
    }
}
