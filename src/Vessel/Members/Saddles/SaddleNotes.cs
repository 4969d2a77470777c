using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>What the one at the brake has to know.</summary>
internal static class SaddleNotes
{
    public static ImmutableArray<string> Of(SaddleSite site, FoldedSheet sheet)
    {
        var bracket = site.Bracket;
        return
        [
            $"{bracket.Name.ToUpperInvariant()}, {bracket.Material.Name}, {NoteText.Length(bracket.Thickness)} mm, "
                + $"{NoteText.Length(bracket.Width)} x {NoteText.Length(bracket.PlateHeight)} mm over the bent ears",
            "OUTSIDE FACE UP: the face away from the shell. x towards increasing angle, y up. Millimetres, from the lower left corner.",
            .. sheet.Bends.Select((bend, i) => BendLine.Note(i + 1, bend, site.AtSides ? "x" : "y")),
            Check(site, sheet),
            site.AtSides
                ? "Ears' ends cut square: they touch the shell along their inner edges."
                : $"Ears' ends follow the shell: arcs of radius {NoteText.Length(site.ShellRadius)} mm.",
        ];
    }

    private static string Check(SaddleSite site, FoldedSheet sheet)
    {
        string[] lengths =
        [
            NoteText.Length(site.Ear),
            NoteText.Length(site.Allowance),
            NoteText.Length(site.Straight),
            NoteText.Length(site.Allowance),
            NoteText.Length(site.Ear),
        ];
        return $"Check: flat {NoteText.Length(site.Developed)} = {string.Join(" + ", lengths)} mm (ear, bend, plate, bend, ear"
            + (site.AtSides ? string.Empty : "; ears at their sides")
            + $"); bend deduction {NoteText.Length(sheet.Bends[0].Deduction(sheet.Thickness))} mm each.";
    }
}
