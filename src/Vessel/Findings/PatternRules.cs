using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Patterns of holes that a laser may not cut, or that leave too little between them.</summary>
internal static class PatternRules
{
    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        foreach (var part in assembly.Parts)
        {
            foreach (var field in part.Fields)
            {
                if (Web(part, field, assembly) is { } web)
                    yield return web;
                if (Hole(part, field, assembly) is { } hole)
                    yield return hole;
            }
        }
    }

    private static Finding? Web(Part part, HoleField field, Assembly assembly)
    {
        var (web, limit) = (field.Lattice.Pitch - field.Diameter, CutterLimits.Aim * part.Thickness);
        if (web >= limit)
            return null;
        return new(
            FindingCodes.WebTooNarrow,
            Severity.Warning,
            [part.Id],
            $"{NoteText.Length(web)} mm stay between the holes of {part.Name} in {NoteText.Length(part.Thickness)} mm sheet: heat warps "
            + "webs below one thickness; widen the pitch, or take smaller holes or thinner sheet.",
            [new("web", web, limit, "mm")],
            assembly.Design.PlaceOf($"{field.Path}.pitch"));
    }

    private static Finding? Hole(Part part, HoleField field, Assembly assembly)
    {
        if (field.Diameter >= CutterLimits.Aim * part.Thickness)
            return null;
        var grave = field.Diameter < CutterLimits.LeastHole * part.Thickness;
        return new(
            FindingCodes.HoleTooSmallToCut,
            grave ? Severity.Error : Severity.Warning,
            [part.Id],
            $"the holes of {part.Name} are {NoteText.Length(field.Diameter)} mm in {NoteText.Length(part.Thickness)} mm sheet: "
            + "cutters ask for one thickness, none takes less than half; drill them instead, or take thinner sheet.",
            [new("diameter", field.Diameter, (grave ? CutterLimits.LeastHole : CutterLimits.Aim) * part.Thickness, "mm")],
            assembly.Design.PlaceOf($"{field.Path}.hole_diameter"));
    }
}
