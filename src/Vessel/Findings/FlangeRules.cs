using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What is bent so near to an edge, or to the next bend, that no press brake holds it.</summary>
internal static class FlangeRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) => assembly.Members.SelectMany(member => member.Flanges)
        .Select(flange => Of(flange, assembly.Design));

    private static Measure Of(Flange flange, VesselDesign design)
    {
        var (part, what, leg, thickness, key) = flange;
        var least = BrakeDies.LeastFlange(thickness);
        return new(
            FindingCodes.FlangeTooShort,
            Severity.Warning,
            [Slug.Of(part)],
            () => $"{what} is {NoteText.Length(leg)} mm long from its bend line, in metal of {NoteText.Length(thickness)} mm; a press "
            + "brake needs "
            + $"{NoteText.Length(least.Value)} mm ({least.Source}): make it longer, bend it over length and cut it back, or weld it up "
            + "from strips.",
            [new("bend line to edge", leg, AtLeast(least.Value), "mm")],
            design.PlaceOf(key),
            $"bend line to edge, {what}");
    }
}
