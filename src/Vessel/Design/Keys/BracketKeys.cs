namespace Vessel.Design;

/// <summary>The keys under <c>bracket</c>.</summary>
internal static class BracketKeys
{
    public static KeyRange K { get; } = new(0.2, 0.6);

    public static KeyMap Place { get; } = new("the place of a bracket",
    [
        new("height", KeyKind.Length, "Of the plate's middle, above the shell's lower edge")
        {
            IsRequired = true, Range = CommonKeys.FromZero,
        },
        CommonKeys.Angle,
    ]);

    public static KeyMap Bolts { get; } = new("the bolts of a bracket",
    [
        new("diameter", KeyKind.Length, "Of each bolt") { IsRequired = true, Range = new(2, 50) },
        new("across", KeyKind.Length, "From middle to middle along the girth; 0 for one column")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("up", KeyKind.Length, "From middle to middle upward; 0 for one row")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("slot", KeyKind.Length, "By how much each hole is drawn out upward; 0 for round holes")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
    ]);

    public static KeyMap Bracket { get; } = new("the bracket",
    [
        new("at", KeyKind.Mapping, "Where its middle is") { IsRequired = true, Map = Place },
        new("thickness", KeyKind.Length, "Of the sheet") { IsRequired = true, Range = CommonKeys.Wall },
        new("width", KeyKind.Length, "Over all along the girth") { IsRequired = true, Range = CommonKeys.Diameter },
        new("height", KeyKind.Length, "Over all upward") { IsRequired = true, Range = CommonKeys.Diameter },
        new("stand_off", KeyKind.Length, "From the shell's outside to the plate's back, where they are nearest")
        {
            IsRequired = true, Range = new(0, 1000),
        },
        new("ears", KeyKind.Choice, "Which edges are bent towards the shell: left and right, or top and bottom")
        {
            Choices = ["sides", "ends"], Default = "sides",
        },
        new("inside_radius", KeyKind.Length, "Of the bends")
        {
            DefaultRule = "the thickness", Range = new(0, 100),
        },
        new("k", KeyKind.Ratio, "Place of a bend's neutral line, as a share of the thickness from the inside")
        {
            DefaultRule = "the shop's: 0.41 for aluminium and mild steel, 0.45 for stainless", Range = K,
        },
        new("bolts", KeyKind.Mapping, "In the plate") { IsRequired = true, Map = Bolts },
        CommonKeys.Material,
    ]);
}
