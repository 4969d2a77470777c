using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>The keys under <c>inside</c>.</summary>
internal static class InsideKeys
{
    /// <summary>More would be a pattern of holes.</summary>
    public const int MostRows = 8;

    private static readonly Key _hangsFrom = new("hangs_from", KeyKind.Choice, "The flat head that carries it")
    {
        Choices = ["top"],
        NotBuiltYet = ["bottom"],
        Default = "top",
    };

    private static readonly ImmutableArray<Key> _holes =
    [
        new("hole_diameter", KeyKind.Length, "Of each hole") { IsRequired = true, Range = new(0.3, 1000) },
        new("pitch", KeyKind.Length, "Least distance of the middles of two holes")
        {
            IsRequired = true, Range = new(0.5, 1000),
        },
        new("pattern", KeyKind.Choice, "Arrangement of the holes")
        {
            Choices = ["staggered_60", "staggered_45", "square", "rings"], Default = "staggered_60",
        },
        new("margin", KeyKind.Length, "From a hole's edge to the plate's edge, and to an opening's")
        {
            DefaultRule = "the thickness or half the hole's diameter, whichever is larger", Range = new(0.1, 1000),
        },
    ];

    public static KeyMap Windows { get; } = new("windows",
    [
        new("count", KeyKind.Count, "Number, evenly round") { IsRequired = true, Range = new(1, 100) },
        new("width", KeyKind.Length, "Of each, round the outside") { Range = CommonKeys.LengthOfPart },
        new("diameter", KeyKind.Length, "Of each round one, instead of width and height") { Range = CommonKeys.LengthOfPart },
        new("height", KeyKind.Length, "Of each, upward")
        {
            IsRequired = true, Range = CommonKeys.LengthOfPart, AppliesWhen = new("width", null),
        },
        new("ends", KeyKind.Choice, "Square with round corners, or half circles: a slot, upright or level")
        {
            Choices = ["square", "round"], Default = "square", AppliesWhen = new("width", null),
        },
        new("corner", KeyKind.Length, "Radius of the corners")
        {
            DefaultRule = "3 mm, or a quarter of the smaller side where that is less",
            Range = CommonKeys.FromZero,
            AppliesWhen = new("ends", "square"),
        },
        new("up", KeyKind.Length, "From a cap's plate, a sleeve's lower end or a port's inner end to the nearer edge")
        {
            IsRequired = true, Range = CommonKeys.FromZero,
        },
        CommonKeys.Angle with
        {
            Description = "Of the first window's middle; in a port's tube as an elbow's direction",
        },
        new("rows", KeyKind.Count, "Number of such rows, one above the other: a pattern round the tube") { Default = "1", Range = new(1, 50) },
        new("row_pitch", KeyKind.Length, "From one row's middles up to the next one's")
        {
            DefaultRule = "1.5 x the height, or diameter", Range = CommonKeys.LengthOfPart,
        },
        new("staggered", KeyKind.Choice, "Whether every other row is turned by half the distance of two windows")
        {
            Choices = CommonKeys.TruthValues, Default = "false",
        },
    ])
    {
        OneOf = [["width", "diameter"]],
    };

    public static KeyMap Pattern { get; } = new("a pattern of holes", _holes);

    public static KeyMap Cap { get; } = new("a cap",
    [
        Name("cap"),
        new("outside_diameter", KeyKind.Length, "Of plate and skirt")
        {
            IsRequired = true, Range = CommonKeys.Diameter,
        },
        new("wall", KeyKind.Length, "Thickness of plate and skirt") { IsRequired = true, Range = CommonKeys.Wall, TubeWhen = new("made_from", "tube") },
        new("skirt", KeyKind.Length, "Height of the skirt alone") { IsRequired = true, Range = CommonKeys.LengthOfPart },
        new("opens", KeyKind.Choice, "Up: the skirt meets the head. Down: the outlet's tube carries the plate")
        {
            IsRequired = true, Choices = ["up", "down"],
        },
        _hangsFrom,
        Fixed("weld", "weld", "tabs", "screws"),
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
        new("windows", KeyKind.OneOrList, "In the skirt, a row or several") { DefaultRule = "none", Map = Windows, Items = new(0, MostRows) },
        new("pattern", KeyKind.Mapping, "Holes in the plate") { DefaultRule = "none", Map = Pattern },
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

    public static KeyMap Sleeve { get; } = new("a sleeve",
    [
        Name("sleeve"),
        new("tube", KeyKind.Mapping, "Stock that it is cut from") { IsRequired = true, Map = CommonKeys.Tube },
        new("length", KeyKind.Length, "From the head's inner face to the lower end")
        {
            IsRequired = true, Range = CommonKeys.LengthOfPart,
        },
        _hangsFrom,
        Fixed("weld", "weld", "tabs", "screws"),
        new("windows", KeyKind.OneOrList, "Openings in its wall, a row or several")
        {
            DefaultRule = "none", Map = Windows, Items = new(0, MostRows),
        },
        CommonKeys.Material,
    ]);

    public static KeyMap PlaceOfDisc { get; } = new("the place of a disc",
    [
        new("height", KeyKind.Length, "Of its lower face, above the shell's lower edge")
        {
            IsRequired = true, Range = CommonKeys.FromZero,
        },
    ]);

    public static KeyMap Disc { get; } = new("a disc",
    [
        new("name", KeyKind.Text, "Its name; also part of file names") { IsRequired = true },
        new("fits", KeyKind.Text, "Name of the sleeve that it stands in, or 'shell'")
        {
            DefaultRule = "the sleeve where there is just one, else the shell",
        },
        new("at", KeyKind.Mapping, "Where it stands") { IsRequired = true, Map = PlaceOfDisc },
        new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
        new("clearance", KeyKind.Length, "Clearance to its bore, all round; below zero it is pressed in")
        {
            Default = "0.2 mm", Range = new(-0.5, 5),
        },
        Fixed("tabs", "weld", "tabs", "screws", "press", "loose"),
        .. _holes,
        new("bore", KeyKind.Length, "Diameter of an opening in the middle, for a tube; 0 for none")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        CommonKeys.Material,
    ]);

    public static KeyMap Packing { get; } = new("a packing",
    [
        Name("packing"),
        new("material", KeyKind.Text, "As it is bought: 'stainless wool'") { IsRequired = true },
        new("between", KeyKind.Texts, "Names of the disc below and the disc above")
        {
            IsRequired = true, Items = new(1, 2),
        },
        new("density", KeyKind.Density, "Of the packing as stuffed") { IsRequired = true, Range = new(1, 5000) },
        new("fibre_diameter", KeyKind.Length, "Of one fibre") { DefaultRule = "not known", Range = new(0.001, 5) },
    ]);

    public static KeyMap Inside { get; } = new("the parts inside",
    [
        new("cap", KeyKind.OneOrList, "A cup under the outlet") { DefaultRule = "none", Map = Cap, Items = new(0, 24) },
        new("sleeve", KeyKind.OneOrList, "A tube round the outlet")
        {
            DefaultRule = "none", Map = Sleeve, Items = new(0, 24),
        },
        new("discs", KeyKind.List, "Plates with holes") { DefaultRule = "none", Map = Disc, Items = new(0, 24) },
        new("packing", KeyKind.OneOrList, "Loose fibres between two discs")
        {
            DefaultRule = "none", Map = Packing, Items = new(0, 24),
        },
    ])
    {
        MayBeEmpty = true,
    };

    /// <summary>A name that may be left out while the part is the only one of its kind.</summary>
    private static Key Name(string kind) => new("name", KeyKind.Text, "Its name; needed where there are several")
    {
        Default = kind,
    };

    private static Key Fixed(string usual, params ImmutableArray<string> ways) =>
        new("fixed", KeyKind.Choice, "Way of holding it") { Choices = ways, Default = usual };
}
