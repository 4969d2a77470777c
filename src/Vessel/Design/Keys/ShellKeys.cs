namespace Vessel.Design;

/// <summary>The shell.</summary>
internal static class ShellKeys
{
    public static KeyMap Reducer { get; } = new("a reducer",
    [
        new("from", KeyKind.Length, "Height of its lower edge") { IsRequired = true, Range = CommonKeys.LengthOfPart },
        new("length", KeyKind.Length, "Along the shell's axis") { IsRequired = true, Range = CommonKeys.LengthOfPart },
        new("diameter", KeyKind.Length, "Outside diameter of the shell above it") { IsRequired = true, Range = CommonKeys.Diameter },
        new("seam_angle", KeyKind.Angle, "Where its seam lies")
        {
            DefaultRule = "as far as may be from the seams of the shell below it", Range = CommonKeys.Turn,
        },
        new("sheets", KeyKind.Count, "Equal sheets round it, with a seam between each two")
        {
            DefaultRule = "as many as the shell below it has", Range = CommonKeys.Sheets,
        },
        new("root_gap", KeyKind.Length, "Left open along its seam before welding")
        {
            DefaultRule = CommonKeys.RootGapRule, Range = CommonKeys.Gap,
        },
        new("above", KeyKind.Choice, "Stock of the shell above it")
        {
            DefaultRule = "as the shell below it", Choices = ["sheet", "tube"],
        },
        new("above_seam_angle", KeyKind.Angle, "Where the long seam of the shell above it lies, where that is rolled")
        {
            DefaultRule = "as far as may be from the reducer's", Range = CommonKeys.Turn,
        },
        new("above_sheets", KeyKind.Count, "Equal sheets round the shell above it, where that is rolled")
        {
            DefaultRule = "as many as the reducer has", Range = CommonKeys.Sheets,
        },
    ]);

    public static KeyMap Shell { get; } = new("the shell",
    [
        new("outside_diameter", KeyKind.Length, "Outside diameter, at the lower edge") { Range = CommonKeys.Diameter },
        new("inside_diameter", KeyKind.Length, "Inside diameter, instead of the outside") { Range = CommonKeys.Diameter },
        new("top_diameter", KeyKind.Length, "Outside diameter at the upper edge of a shell that is a frustum")
        {
            DefaultRule = "none: a cylinder", Range = CommonKeys.Diameter, AppliesWhen = new("outside_diameter", null),
        },
        new("reducer", KeyKind.Mapping, "A cone from one diameter to another, between two cylinders")
        {
            DefaultRule = "none: one diameter", Map = Reducer,
        },
        new("wall", KeyKind.Length, "Wall thickness") { IsRequired = true, Range = CommonKeys.Wall, TubeWhen = new("made_from", "tube") },
        new("height", KeyKind.Length, "From the lower to the upper edge") { IsRequired = true, Range = new(5, 10_000) },
        new("made_from", KeyKind.Choice, "Rolled from sheet, or cut from tube")
        {
            IsRequired = true, Choices = ["sheet", "tube"],
        },
        new("sheets", KeyKind.Count, "Equal sheets round the shell, with a long seam between each two")
        {
            Default = "1", Range = CommonKeys.Sheets, AppliesWhen = new("made_from", "sheet"),
        },
        new("seam_angle", KeyKind.Angle, "Where the long seam lies, of several the first")
        {
            Default = "180 deg", Range = CommonKeys.Turn, AppliesWhen = new("made_from", "sheet"),
        },
        new("root_gap", KeyKind.Length, "Left open along the long seam before welding")
        {
            DefaultRule = CommonKeys.RootGapRule, Range = CommonKeys.Gap, AppliesWhen = new("made_from", "sheet"),
        },
        new("large_holes", KeyKind.Choice, "When holes over a quarter of the diameter are cut: before, but for tabs, or scribed and cut "
            + "after")
        {
            Choices = ["before_rolling", "on_tabs", "after_rolling"], Default = "before_rolling", AppliesWhen = new("made_from", "sheet"),
        },
        CommonKeys.Material,
    ])
    {
        OneOf = [["outside_diameter", "inside_diameter"]],
        NotBuiltYet = (["width", "depth", "side", "sides"], "a square or rectangular shell"),
    };
}
