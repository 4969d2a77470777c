using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Holes that a laser may not cut. Published shop rules disagree (0.5 to 1.5 times the thickness).</summary>
internal static class HoleRules
{
    /// <summary>Warn below one thickness (Tuan Thinh, SMS Laser), refuse below half of it (cutitout).</summary>
    private const double AimShare = 1;
    private const double LeastShare = 0.5;

    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        foreach (var part in assembly.Parts.Where(part => part.Flat is { Kind: FlatKind.Sheet }))
        {
            foreach (var hole in part.Holes.Where(hole => hole.Outline is not null && hole.Diameter < AimShare * part.Thickness))
            {
                var grave = hole.Diameter < LeastShare * part.Thickness;
                yield return new(
                    FindingCodes.HoleTooSmallToCut,
                    grave ? Severity.Error : Severity.Warning,
                    [part.Id],
                    $"hole {hole.Number} of {part.Name} is {NoteText.Length(hole.Diameter)} mm in {NoteText.Length(part.Thickness)} mm sheet: "
                    + "cutters ask for one thickness, none takes less than half; drill it instead.",
                    [new("diameter", hole.Diameter, (grave ? LeastShare : AimShare) * part.Thickness, "mm")],
                    assembly.Design.PlaceOf(part.Path));
            }
        }
    }
}
