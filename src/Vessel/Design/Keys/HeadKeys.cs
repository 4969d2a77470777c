using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>What closes an end of the shell.</summary>
internal static class HeadKeys
{
    private static readonly Key _shape = new("shape", KeyKind.Choice, "Shape of this end")
    {
        IsRequired = true,
        Choices = ["flat", "hemisphere", "ellipsoid", "torisphere", "cone"],
    };

    private static readonly Key _wall = new("wall", KeyKind.Length, "Wall thickness")
    {
        DefaultRule = "the shell's wall",
        Range = CommonKeys.Wall,
    };

    private static readonly Key _flange = new("flange", KeyKind.Length, "Height of the straight flange at its rim")
    {
        Default = "0 mm",
        Range = CommonKeys.FromZero,
    };

    public static KeyMap Flat { get; } = new("a flat head",
    [
        _shape,
        new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
        new("seat", KeyKind.Choice, "Inside the shell, on its end, with the edges in line, or butted to it by a flange of its own")
        {
            Choices = ["inset", "overlay", "flush", "flanged"], Default = "inset",
        },
        _flange with { AppliesWhen = new("seat", "flanged") },
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

    public static KeyMap Gores { get; } = new("the gores of a dished head",
    [
        new("count", KeyKind.Count, "Number of gores") { Default = "8", Range = new(6, 24) },
        new("cap_diameter", KeyKind.Length, "Across the polar cap's seam, on the middle of the wall")
        {
            DefaultRule = "0.35 x the outside diameter", Range = new(5, 10_000),
        },
        new("seam_angle", KeyKind.Angle, "Where the first seam between two gores lies")
        {
            DefaultRule = "half a gore beyond the shell's seam", Range = CommonKeys.Turn,
        },
    ])
    {
        MayBeEmpty = true,
    };

    private static readonly Key _madeFrom = new("made_from", KeyKind.Choice, "Way of making it")
    {
        Choices = ["spinning", "gores"],
        Default = "spinning",
    };

    private static readonly Key _gores = new("gores", KeyKind.Mapping, "Division into gores")
    {
        DefaultRule = "its own defaults",
        Map = Gores,
        AppliesWhen = new("made_from", "gores"),
    };

    public static KeyMap Hemisphere { get; } = new("a hemisphere", [_shape, _wall, _madeFrom, _flange, _gores, CommonKeys.Material]);

    public static KeyMap Ellipsoid { get; } = new("an ellipsoid", [_shape, _wall, _madeFrom, _flange, _gores, CommonKeys.Material]);

    public static KeyMap Torisphere { get; } = new("a torisphere",
    [
        _shape,
        new("standard", KeyKind.Choice, "Chooses both radii, as multiples of the outside diameter")
        {
            Choices = ["DIN 28011", "DIN 28013", "flanged and dished"],
        },
        new("crown_radius", KeyKind.Length, "Of the spherical middle, inside; instead of a standard")
        {
            Range = CommonKeys.Diameter,
        },
        new("knuckle_radius", KeyKind.Length, "Of the turn into the rim, inside")
        {
            IsRequired = true, Range = CommonKeys.LengthOfPart, AppliesWhen = new("crown_radius", null),
        },
        _wall,
        _madeFrom,
        _flange,
        _gores,
        CommonKeys.Material,
    ])
    {
        OneOf = [["standard", "crown_radius"]],
    };

    public static KeyMap Cone { get; } = new("a cone",
    [
        _shape,
        _wall,
        new("angle", KeyKind.Angle, "Between opposite sides of the cone") { IsRequired = true, Range = new(20, 160) },
        new("made_from", KeyKind.Choice, "Rolled from sheet up to a port at its pole, or spun with a round nose and a knuckle")
        {
            Choices = ["sheet", "spinning"], Default = "sheet",
        },
        _flange with { AppliesWhen = new("made_from", "spinning") },
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

    public static ImmutableDictionary<string, KeyMap> ByShape { get; } = ImmutableDictionary<string, KeyMap>.Empty
        .Add("flat", Flat).Add("hemisphere", Hemisphere).Add("ellipsoid", Ellipsoid).Add("torisphere", Torisphere).Add("cone", Cone);
}
