using Vessel.Design;

namespace Vessel.Members.Cups;

/// <summary>The keys of a cup.</summary>
internal static class CupKeys
{
    public static KeyMap Cup { get; } = new("a cap",
    [
        InsideKeys.Name("cap"),
        new("outside_diameter", KeyKind.Length, "Of plate and skirt")
        {
            IsRequired = true, Range = CommonKeys.Diameter,
        },
        new("wall", KeyKind.Length,
            "Thickness of plate and skirt") { IsRequired = true, Range = CommonKeys.Wall, TubeWhen = new("made_from", "tube") },
        new("skirt", KeyKind.Length, "Height of the skirt alone") { IsRequired = true, Range = CommonKeys.LengthOfPart },
        new("opens", KeyKind.Choice, "Up: the skirt meets the head. Down: the outlet's tube carries the plate")
        {
            IsRequired = true, Choices = ["up", "down"],
        },
        InsideKeys.HangsFrom,
        InsideKeys.Fixed("weld", "weld", "tabs", "screws"),
        new("drop", KeyKind.Length, "From the head's inner face to the plate's upper face")
        {
            DefaultRule = "so that the outlet's tube ends flush with the plate's lower face",
            Range = CommonKeys.FromZero,
            AppliesWhen = new("opens", "down"),
        },
        new("outlet", KeyKind.Text, "Name of the tube that passes through the plate")
        {
            DefaultRule = "the tube set in the middle of the head", AppliesWhen = new("opens", "down"),
        },
        new("clearance", KeyKind.Length, "Between that tube and the plate, all round")
        {
            Default = "0.2 mm", Range = CommonKeys.Gap, AppliesWhen = new("opens", "down"),
        },
        new("drain_hole", KeyKind.Length, "Diameter of a hole in the plate's middle; 0 for none")
        {
            Default = "0 mm", Range = CommonKeys.FromZero, AppliesWhen = new("opens", "up"),
        },
        new("windows", KeyKind.OneOrList,
            "In the skirt, a row or several") { DefaultRule = "none", Map = InsideKeys.Windows, Items = new(0, InsideKeys.MostRows) },
        new("pattern", KeyKind.Mapping, "Holes in the plate") { DefaultRule = "none", Map = InsideKeys.Pattern },
        new("made_from", KeyKind.Choice, "Of the skirt: rolled from sheet, or cut from tube")
        {
            Choices = ["sheet", "tube"], Default = "tube",
        },
        new("seam_angle", KeyKind.Angle, "Where the seam of a rolled skirt lies")
        {
            DefaultRule = "half-way between two windows; 180 deg where there are none",
            Range = CommonKeys.Turn,
            AppliesWhen = new("made_from", "sheet"),
        },
        CommonKeys.Material,
    ]);
}
