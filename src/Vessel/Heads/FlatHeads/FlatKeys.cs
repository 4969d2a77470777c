using Vessel.Design;

namespace Vessel.Heads.FlatHeads;

/// <summary>Keys of flat heads, those with a flange of their own too.</summary>
internal static class FlatKeys
{
    public static KeyMap All { get; } = new("a flat head",
    [
        new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
        new("seat", KeyKind.Choice, "Inside the shell, on its end, with the edges in line, or butted to it by a flange of its own")
        {
            Choices = ["inset", "overlay", "flush", "flanged"], Default = "inset",
        },
        CommonHeadKeys.Flange with { AppliesWhen = new("seat", "flanged") },
        new("knuckle_radius", KeyKind.Length, "Of the turn into the flange, inside")
        {
            DefaultRule = "3 x the thickness: [practice]", Range = CommonKeys.LengthOfPart, AppliesWhen = new("seat", "flanged"),
        },
        new("recess", KeyKind.Length, "Depth of the outer face inside the shell's end")
        {
            Default = "0 mm", Range = CommonKeys.FromZero, AppliesWhen = new("seat", "inset"),
        },
        new("clearance", KeyKind.Length, "Between plate and shell, all round")
        {
            Default = "0.2 mm", Range = CommonKeys.Gap, AppliesWhen = new("seat", "inset"),
        },
        new("outside_diameter", KeyKind.Length, "Of the plate")
        {
            DefaultRule = "the shell's outside diameter", Range = CommonKeys.Diameter, AppliesWhen = new("seat", "overlay"),
        },
        CommonKeys.Material,
    ]);
}
