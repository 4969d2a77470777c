using Vessel.Function;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Patterns of holes that a laser may not cut, or that leave too little between them.</summary>
internal static class PatternRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        foreach (var part in assembly.Parts)
        {
            foreach (var field in part.Fields)
            {
                yield return Web(part, field, assembly);
                yield return Hole(part, field, assembly);
            }
        }
    }

    private static Measure Web(Part part, HoleField field, Assembly assembly)
    {
        var web = field.Lattice.Pitch - field.Diameter;
        return new(
            FindingCodes.WebTooNarrow,
            Severity.Warning,
            [part.Id],
            () => $"{NoteText.Length(web)} mm stay between the holes of {part.Name} in {NoteText.Length(part.Thickness)} mm sheet: heat "
            + "warps "
            + "webs below one thickness; widen the pitch, or take smaller holes or thinner sheet.",
            [new("web", web, CutterLimits.Web(part.Thickness), "mm")],
            assembly.Design.PlaceOf($"{field.Path}.pitch"),
            $"between holes, {field.Purpose}");
    }

    private static Measure Hole(Part part, HoleField field, Assembly assembly)
    {
        return new(
            FindingCodes.HoleTooSmallToCut,
            Severity.Warning,
            [part.Id],
            () => $"the holes of {part.Name} are {NoteText.Length(field.Diameter)} mm in {NoteText.Length(part.Thickness)} mm sheet: "
            + "cutters ask for one thickness, none takes less than half; drill them instead, or take thinner sheet.",
            [new("diameter", field.Diameter, CutterLimits.Hole(part.Thickness), "mm")],
            assembly.Design.PlaceOf($"{field.Path}.hole_diameter"),
            $"holes, {field.Purpose}");
    }
}
