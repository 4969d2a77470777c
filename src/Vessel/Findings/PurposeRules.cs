using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Whether a port can do what it is there for where it stands.</summary>
internal static class PurposeRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) => assembly.Capacity.Events is [var first, ..]
        ? assembly.Cavity.Openings.Where(way => way.IsPort).Select(way => Held(way, first, assembly)).OfType<Measure>()
        : [];

    /// <summary>A port's level against the working level, which is that of the first event; null where its purpose asks for none.</summary>
    private static Measure? Held(Opening way, LevelEvent first, Assembly assembly)
    {
        var (above, mouth) = (assembly.Attitude.Sill(way) - first.Level, assembly.Attitude.Lowest(way) - first.Level);
        return way.Purpose switch
        {
            PortPurpose.Overflow => Level(
                FindingCodes.OverflowTooHigh,
                () => $"{first.What}, {NoteText.Length(above)} mm below the overflow '{way.Name}', which so never runs: move it down.",
                new("above what comes first", above, AtMost(0), "mm"),
                $"overflow '{way.Name}' above what comes first"),
            PortPurpose.Fill => Level(
                FindingCodes.FillTooLow,
                () => $"'{way.Name}' can be filled only to {NoteText.Length(-above)} mm below the working level ({first.What}): above that "
                    + $"{assembly.Design.Flow.Liquid.Word} stands over its rim when the cap is taken off; lengthen it, or move it up.",
                new("above the working level", above, AtLeast(0), "mm"),
                $"rim of '{way.Name}' above the working level"),
            PortPurpose.LiquidOut => Level(
                FindingCodes.OutletTooHigh,
                () => $"the mouth of '{way.Name}' lies {NoteText.Length(mouth)} mm above the working level: it draws air; move it down.",
                new("below the working level", -mouth, AtLeast(0), "mm"),
                $"mouth of '{way.Name}' below the working level"),
            _ => null,
        };

        Measure Level(string code, Func<string> words, Measured measured, string margin) => new(
            code, Severity.Warning, [Slug.Of(way.Name)], words, [measured], assembly.Design.PlaceOf($"{way.Path}.at"), margin);
    }
}
