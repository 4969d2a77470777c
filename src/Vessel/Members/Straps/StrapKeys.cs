using Vessel.Design;

namespace Vessel.Members.Straps;

/// <summary>The keys under <c>strap</c>.</summary>
internal static class StrapKeys
{
    private static KeyMap Bolts(string holder) => new($"the bolts of {holder}",
    [
        new("diameter", KeyKind.Length, "Of each bolt") { IsRequired = true, Range = new(2, 50) },
        new("up", KeyKind.Length, "From middle to middle along the vessel's axis; 0 for one bolt")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("slot", KeyKind.Length, "Length of slot along the strip beyond the round hole; 0 for round holes")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
    ]);

    public static KeyMap Feet { get; } = new("the feet of a strap",
    [
        new("length", KeyKind.Length, "Straight length of each foot") { IsRequired = true, Range = CommonKeys.Diameter },
        new("stand_off", KeyKind.Length, "From the shell's outside to the face that the feet are bolted to: legs are bent back to it")
        {
            DefaultRule = "none: the feet carry the ears straight on", Range = new(0, 1000),
        },
        new("bolts", KeyKind.Mapping, "In each foot") { IsRequired = true, Map = Bolts("a foot") },
    ]);

    public static KeyMap Strap { get; } = new("a strap",
    [
        new("name", KeyKind.Text, "Its name; needed where there are several") { Default = "strap" },
        new("at", KeyKind.Mapping, "Where the middle of its back half is")
        {
            IsRequired = true,
            Map = new("the place of a strap",
            [
                new("height", KeyKind.Length,
                    "Of the band's middle, above the shell's lower edge") { IsRequired = true, Range = CommonKeys.FromZero },
                CommonKeys.Angle,
            ]),
        },
        new("thickness", KeyKind.Length, "Of the sheet") { IsRequired = true, Range = CommonKeys.Wall },
        new("width", KeyKind.Length, "Of the band, along the vessel's axis") { IsRequired = true, Range = CommonKeys.Diameter },
        new("gap", KeyKind.Length,
            "Between the ears of both halves before the bolts are drawn up") { Default = "4 mm", Range = new(0.5, 100) },
        new("liner", KeyKind.Length,
            "Thickness of the rubber between shell and strap; 0 for none") { Default = "0 mm", Range = new(0, 30) },
        new("ear", KeyKind.Length, "Straight length of an ear beyond its bend, with the bolt in its middle")
        {
            IsRequired = true, Range = CommonKeys.Diameter,
        },
        new("inside_radius", KeyKind.Length, "Of the ears' bends")
        {
            DefaultRule = "the thickness, or the least published one for the metal where that is larger", Range = new(0.1, 100),
        },
        new("k", KeyKind.Ratio, "Place of a bend's neutral line, as a share of the thickness from the inside")
        {
            DefaultRule = "the shop's: 0.41 for aluminium and mild steel, 0.45 for stainless", Range = CommonKeys.NeutralLine,
        },
        new("bolts", KeyKind.Mapping, "That draw the halves together, in each ear") { IsRequired = true, Map = Bolts("a strap") },
        new("feet", KeyKind.Mapping,
            "Feet of the back half, beyond its ears, by which the vessel is bolted up") { IsRequired = true, Map = Feet },
        CommonKeys.Material,
    ]);
}
