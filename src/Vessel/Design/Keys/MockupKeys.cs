namespace Vessel.Design;

/// <summary>The keys under <c>mockup</c>.</summary>
internal static class MockupKeys
{
    public static KeyMap Bed { get; } = new("the bed of a printer",
    [
        new("width", KeyKind.Length, "From left to right") { Default = "220 mm", Range = new(20, 5000) },
        new("depth", KeyKind.Length, "From front to back") { Default = "220 mm", Range = new(20, 5000) },
        new("height", KeyKind.Length, "Greatest height of a print") { Default = "250 mm", Range = new(20, 5000) },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap DrainHole { get; } = new("a drain hole of the mock-up",
    [
        new("diameter", KeyKind.Length, "As printed") { Default = "4 mm", Range = new(1, 100) },
        new("radius", KeyKind.Length, "Of its axis from the vessel's axis, in the bottom")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        CommonKeys.Angle,
    ]);

    public static KeyMap Mockup { get; } = new("the mock-up from the 3D printer",
    [
        new("inside", KeyKind.Choice, "With its room inside and open bores, or filled")
        {
            Choices = ["open", "solid"], Default = "open",
        },
        new("internals", KeyKind.Choice, "Sleeves, caps and discs: left out, or beside it as pieces of their own to print")
        {
            Choices = ["left_out", "beside"], Default = "left_out",
        },
        new("wall", KeyKind.Length, "Least thickness of a wall as printed") { Default = "1.2 mm", Range = new(0.2, 50) },
        new("scale", KeyKind.Ratio, "Of the print to the vessel") { Default = "1", Range = new(0.05, 4) },
        new("clearance", KeyKind.Length, "As printed, all round: taken off tubes, and left round threads in bungs; 0 for neither")
        {
            Default = "0 mm", Range = new(0, 2),
        },
        new("bed", KeyKind.Mapping, "Size of the printer's bed") { DefaultRule = "its own defaults", Map = Bed },
        new("split", KeyKind.Choice, "Into pieces with flat faces, and pegs where they are wide enough, when it is larger than the bed")
        {
            Choices = ["when_needed", "never"], Default = "when_needed",
        },
        new("stand", KeyKind.Length, "Clear height that a ring to stand it in leaves below it, as printed; 0 for no stand")
        {
            Default = "0 mm", Range = new(0, 500),
        },
        new("names", KeyKind.Choice, "The ports' names, and the long seam as a line with its weld's number, out of the surface or into it")
        {
            Choices = ["none", "raised", "sunk"], Default = "none",
        },
        new("letter_height", KeyKind.Length, "Of a capital as printed, where there is room; else less, down to 5 mm")
        {
            Default = "7 mm", Range = new(5, 60),
        },
        new("letter_depth", KeyKind.Length, "That letters stand out or in, as printed; sunk ones leave the least wall under them")
        {
            Default = "0.6 mm", Range = new(0.3, 3),
        },
        new("drain_holes", KeyKind.List, "Upright through the bottom, to let resin or powder out")
        {
            DefaultRule = "none", Map = DrainHole,
        },
        new("hose_wall", KeyKind.Length, "Thickness of the hoses, for the room that they take") { Default = "5 mm", Range = new(0, 100) },
        new("hose_straight", KeyKind.Ratio, "Outside diameters of its port that a hose runs straight before it may bend")
        {
            Default = "1", Range = new(0, 20),
        },
    ])
    {
        MayBeEmpty = true,
    };
}
