using Vessel.Function;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Holes that a laser may not cut.</summary>
internal static class HoleRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        foreach (var part in assembly.Parts.Where(part => part.Flat is { Kind: FlatKind.Sheet }))
        {
            var cut = part.Holes.Where(hole => hole.Outline is not null).ToList();
            var smallest = cut.MinBy(hole => hole.Diameter);
            foreach (var hole in cut)
            {
                yield return new(
                    FindingCodes.HoleTooSmallToCut,
                    Severity.Warning,
                    [part.Id],
                    () => $"hole {hole.Number} of {part.Name} is {NoteText.Length(hole.Diameter)} mm in {NoteText.Length(part.Thickness)} "
                    + "mm sheet: "
                    + "cutters ask for one thickness, none takes less than half; drill it instead.",
                    [new("diameter", hole.Diameter, CutterLimits.Hole(part.Thickness), "mm")],
                    assembly.Design.PlaceOf(part.Path),
                    hole == smallest ? $"smallest hole of {part.Name}" : null);
            }
        }
    }
}
