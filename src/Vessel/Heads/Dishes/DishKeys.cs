using Vessel.Design;

namespace Vessel.Heads.Dishes;

/// <summary>Keys of dished heads.</summary>
internal static class DishKeys
{
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

    public static KeyMap Hemisphere { get; } = new(
        "a hemisphere", [CommonHeadKeys.Wall, _madeFrom, CommonHeadKeys.Flange, _gores, CommonKeys.Material]);

    public static KeyMap Ellipsoid { get; } = new(
        "an ellipsoid", [CommonHeadKeys.Wall, _madeFrom, CommonHeadKeys.Flange, _gores, CommonKeys.Material]);

    public static KeyMap Torisphere { get; } = new("a torisphere",
    [
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
        CommonHeadKeys.Wall,
        _madeFrom,
        CommonHeadKeys.Flange,
        _gores,
        CommonKeys.Material,
    ])
    {
        OneOf = [["standard", "crown_radius"]],
    };
}
