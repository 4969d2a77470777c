using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Whether a port can do what it is there for where it stands.</summary>
internal static class PurposeRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var attitude = assembly.Attitude;
        var ports = assembly.Cavity.Openings.Where(way => way.IsPort).ToList();
        if (assembly.Capacity.Events is not [var first, ..])
            yield break;
        var level = first.Level;
        foreach (var way in ports)
        {
            var measure = way.Purpose switch
            {
                PortPurpose.Overflow => Overflow(way, attitude.Sill(way), level, first, assembly),
                PortPurpose.Fill => Filler(way, attitude.Sill(way), level, first, assembly),
                PortPurpose.LiquidOut => Outlet(way, attitude.Lowest(way), level, assembly),
                _ => null,
            };
            if (measure is not null)
                yield return measure;
        }
    }

    private static Measure Overflow(Opening way, double sill, double level, LevelEvent first, Assembly assembly) => new(
        FindingCodes.OverflowTooHigh,
        Severity.Warning,
        [Slug.Of(way.Name)],
        () => $"{first.What}, {NoteText.Length(sill - level)} mm below the overflow '{way.Name}', which so never runs: move it down.",
        [new("above what comes first", sill - level, AtMost(0), "mm")],
        assembly.Design.PlaceOf($"{way.Path}.at"),
        $"overflow '{way.Name}' above what comes first");

    private static Measure Filler(Opening way, double sill, double level, LevelEvent first, Assembly assembly) => new(
        FindingCodes.FillTooLow,
        Severity.Warning,
        [Slug.Of(way.Name)],
        () => $"'{way.Name}' can be filled only to {NoteText.Length(level - sill)} mm below the working level ({first.What}): above that "
            + $"{assembly.Design.Flow.Liquid.Word} stands over its rim when the cap is taken off; lengthen it, or move it up.",
        [new("above the working level", sill - level, AtLeast(0), "mm")],
        assembly.Design.PlaceOf($"{way.Path}.at"),
        $"rim of '{way.Name}' above the working level");

    private static Measure Outlet(Opening way, double mouth, double level, Assembly assembly) => new(
        FindingCodes.OutletTooHigh,
        Severity.Warning,
        [Slug.Of(way.Name)],
        () => $"the mouth of '{way.Name}' lies {NoteText.Length(mouth - level)} mm above the working level: it draws air; move it down.",
        [new("below the working level", level - mouth, AtLeast(0), "mm")],
        assembly.Design.PlaceOf($"{way.Path}.at"),
        $"mouth of '{way.Name}' below the working level");
}
