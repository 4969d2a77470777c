using Vessel.Design;

namespace Vessel.Heads.Cones;

/// <summary>Keys of cones, spun ones too.</summary>
internal static class ConeKeys
{
    public static KeyMap All { get; } = new("a cone",
    [
        CommonHeadKeys.Wall,
        new("angle", KeyKind.Angle, "Between opposite sides of the cone") { IsRequired = true, Range = new(20, 160) },
        new("made_from", KeyKind.Choice, "Rolled from sheet up to a port at its pole, or spun with a round nose and a knuckle")
        {
            Choices = ["sheet", "spinning"], Default = "sheet",
        },
        CommonHeadKeys.Flange with { AppliesWhen = new("made_from", "spinning") },
        new("knuckle_radius", KeyKind.Length, "Of the turn into the rim, inside")
        {
            DefaultRule = "3 x the wall: [practice]", Range = CommonKeys.LengthOfPart, AppliesWhen = new("made_from", "spinning"),
        },
        new("nose_radius", KeyKind.Length, "Of the round tip, inside")
        {
            DefaultRule = "3 x the wall: [practice]", Range = CommonKeys.LengthOfPart, AppliesWhen = new("made_from", "spinning"),
        },
        new("segments", KeyKind.Count, "Equal sheets that it is put together from")
        {
            Default = "1", Range = CommonKeys.Sheets, AppliesWhen = new("made_from", "sheet"),
        },
        new("seam_angle", KeyKind.Angle, "Where its seam lies, or the first of several")
        {
            DefaultRule = "opposite the shell's seam; of several half a segment beyond it", Range = CommonKeys.Turn,
            AppliesWhen = new("made_from", "sheet"),
        },
        new("root_gap", KeyKind.Length, "Left open along each seam before welding")
        {
            DefaultRule = CommonKeys.RootGapRule, Range = CommonKeys.Gap, AppliesWhen = new("made_from", "sheet"),
        },
        CommonKeys.Material,
    ]);
}
