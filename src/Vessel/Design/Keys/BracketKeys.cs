using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>The keys under <c>bracket</c>, by its kind.</summary>
internal static class BracketKeys
{
    public static KeyRange K { get; } = new(0.2, 0.6);

    private static readonly Key _kind = new("kind", KeyKind.Choice, "A saddle with bent ears, or a flat plate that stands on the shell")
    {
        Choices = ["saddle", "plate"],
        Default = "saddle",
    };

    private static readonly Key _name = new("name", KeyKind.Text, "Its name; needed where there are several")
    {
        Default = "bracket",
    };

    private static readonly Key _height = new("height", KeyKind.Length, "Of the plate's middle, above the shell's lower edge")
    {
        IsRequired = true,
        Range = CommonKeys.FromZero,
    };

    private static readonly ImmutableArray<Key> _bolts =
    [
        new("diameter", KeyKind.Length, "Of each bolt") { IsRequired = true, Range = new(2, 50) },
        new("across", KeyKind.Length, "From middle to middle round the shell; 0 for one column")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("up", KeyKind.Length, "From middle to middle upward; 0 for one row")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("slot", KeyKind.Length, "Length of slot upward beyond the round hole; 0 for round holes")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
    ];

    private static readonly Key _tabs = new("tabs", KeyKind.Mapping, "On each edge that meets the shell, for slots cut in its flat: they set the bracket")
    {
        DefaultRule = "none",
        Map = new("the tabs of a bracket",
        [
            new("count", KeyKind.Count, "On each edge") { IsRequired = true, Range = new(1, 20) },
            new("width", KeyKind.Length, "Of each, along the edge") { Default = "12 mm", Range = new(2, 1000) },
            new("clearance", KeyKind.Length, "All round in its slot") { Default = "0.1 mm", Range = new(0, 5) },
        ]),
    };

    public static KeyMap Place { get; } = new("the place of a bracket", [_height, CommonKeys.Angle]);

    public static KeyMap PlatePlace { get; } = new("the place of a plate",
    [
        _height,
        CommonKeys.Angle,
        new("offset", KeyKind.Length, "Sideways towards increasing angle; the plate keeps its direction")
        {
            Default = "0 mm", Range = new(-10_000, 10_000),
        },
        new("roll", KeyKind.Angle, "About the line outward: 0 lies level, 90 stands upright")
        {
            Default = "0 deg", Range = new(-90, 90),
        },
    ]);

    public static KeyMap Bolts { get; } = new("the bolts of a bracket", _bolts);

    public static KeyMap PlateBolts { get; } = new("the bolts of a plate",
    [
        .. _bolts.Select(key => key.Name switch
        {
            "across" => key with { Description = "From middle to middle along the coped edge; 0 for one column" },
            "up" => key with { Description = "From middle to middle away from the shell; 0 for one row" },
            "slot" => key with { Description = "Length of slot away from the shell beyond the round hole; 0 for round holes" },
            _ => key,
        }),
        new("from_shell", KeyKind.Length, "On the plate's middle line, from the coped edge to the middle of the bolts")
        {
            DefaultRule = "half the depth", Range = CommonKeys.FromZero,
        },
    ]);

    public static KeyMap Plate { get; } = new("a plate that stands on the shell",
    [
        _kind,
        _name,
        new("at", KeyKind.Mapping, "Where its middle is") { IsRequired = true, Map = PlatePlace },
        new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
        new("width", KeyKind.Length, "Across the edge that is coped to the shell") { IsRequired = true, Range = CommonKeys.Diameter },
        new("depth", KeyKind.Length, "On the middle line, from the coped edge to the free one")
        {
            IsRequired = true, Range = CommonKeys.Diameter,
        },
        new("free_width", KeyKind.Length, "Of the free edge; the sides lean where it differs")
        {
            DefaultRule = "the width", Range = CommonKeys.Diameter,
        },
        new("corner", KeyKind.Length, "Radius of the free edge's corners; 0 for sharp ones")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("bolts", KeyKind.Mapping, "In the plate") { IsRequired = true, Map = PlateBolts },
        _tabs,
        CommonKeys.Material,
    ]);

    public static KeyMap Saddle { get; } = new("the bracket",
    [
        _kind,
        _name,
        new("at", KeyKind.Mapping, "Where its middle is") { IsRequired = true, Map = Place },
        new("thickness", KeyKind.Length, "Of the sheet") { IsRequired = true, Range = CommonKeys.Wall },
        new("width", KeyKind.Length, "Over all, round the shell") { IsRequired = true, Range = CommonKeys.Diameter },
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
            DefaultRule = "the thickness, or more where the metal's table asks for more", Range = new(0, 100),
        },
        new("k", KeyKind.Ratio, "Place of a bend's neutral line, as a share of the thickness from the inside")
        {
            DefaultRule = "the shop's: 0.41 for aluminium and mild steel, 0.45 for stainless", Range = K,
        },
        new("bolts", KeyKind.Mapping, "In the plate") { IsRequired = true, Map = Bolts },
        _tabs,
        CommonKeys.Material,
    ]);

    public static ImmutableDictionary<string, KeyMap> ByKind { get; } = ImmutableDictionary<string, KeyMap>.Empty
        .Add("saddle", Saddle)
        .Add("plate", Plate);
}
