using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Parts;

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
            .. sheet.Bends.Select((bend, i) => OfBend(i + 1, bend, site.AtSides ? "x" : "y")),
            Check(site, sheet),
            site.AtSides
                ? "Ears' ends cut square: they touch the shell along their inner edges."
                : $"Ears' ends follow the shell: arcs of radius {NoteText.Length(site.ShellRadius)} mm.",
        ];
    }

    /// <param name="axis">Across which the line lies: x or y.</param>
    public static string OfBend(int number, Bend bend, string axis) =>
        $"{BendLine.Words(number, bend.Angle, NoteText.Length(bend.InsideRadius))}; its middle on {axis} = {NoteText.Length(bend.Line)} mm; "
        + $"K {Math.Round(bend.K, 2).ToString(CultureInfo.InvariantCulture)}";

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
