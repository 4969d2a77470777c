using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Holes that a laser may not cut.</summary>
internal static class HoleRules
{
    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        foreach (var part in assembly.Parts.Where(part => part.Flat is { Kind: FlatKind.Sheet }))
        {
            foreach (var hole in part.Holes.Where(hole => hole.Outline is not null && hole.Diameter < CutterLimits.Aim * part.Thickness))
            {
                var grave = hole.Diameter < CutterLimits.LeastHole * part.Thickness;
                yield return new(
                    FindingCodes.HoleTooSmallToCut,
                    grave ? Severity.Error : Severity.Warning,
                    [part.Id],
                    $"hole {hole.Number} of {part.Name} is {NoteText.Length(hole.Diameter)} mm in {NoteText.Length(part.Thickness)} mm sheet: "
                    + "cutters ask for one thickness, none takes less than half; drill it instead.",
                    [new("diameter", hole.Diameter, (grave ? CutterLimits.LeastHole : CutterLimits.Aim) * part.Thickness, "mm")],
                    assembly.Design.PlaceOf(part.Path));
            }
        }
    }
}
