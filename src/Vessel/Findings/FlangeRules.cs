using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What is bent so near to an edge, or to the next bend, that no press brake holds it.</summary>
internal static class FlangeRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) => Flanges(assembly.Design)
        .Select(flange => Of(flange.Part, flange.What, flange.Leg, flange.Thickness, flange.Key, assembly.Design)).OfType<Measure>();

    /// <summary>Each from its bend line on the flat to the edge, or to the next bend line, where it is shortest, mm.</summary>
    internal static IEnumerable<(string Part, string What, double Leg, double Thickness, string Key)> Flanges(VesselDesign design)
    {
        foreach (var bracket in design.Brackets.OfType<SaddleBracket>())
        {
            var site = SaddleSite.Of(bracket, design);
            yield return (bracket.Name, $"an ear of '{bracket.Name}'", site.ShortestEar + (site.Allowance / 2), bracket.Thickness, $"{bracket.Path}.stand_off");
        }

        foreach (var strap in design.Straps)
        {
            foreach (var site in StrapSite.Of(strap, design))
            {
                foreach (var (what, leg, key) in site.Flanges)
                    yield return (site.Name, $"{what} of {site.Name}", leg, strap.Thickness, $"{strap.Path}.{key}");
            }
        }
    }

    private static Measure? Of(string part, string what, double leg, double thickness, string key, VesselDesign design)
    {
        var least = BrakeDies.LeastFlange(thickness);
        if (leg >= least.Value)
            return null;
        return new(
            FindingCodes.FlangeTooShort,
            Severity.Warning,
            [Slug.Of(part)],
            () => $"{what} is {NoteText.Length(leg)} mm long from its bend line, in metal of {NoteText.Length(thickness)} mm; a press brake needs "
            + $"{NoteText.Length(least.Value)} mm ({least.Source}): make it longer, bend it over length and cut it back, or weld it up from strips.",
            [new("bend line to edge", leg, AtLeast(least.Value), "mm")],
            design.PlaceOf(key));
    }
}
