using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Keys that several kinds of internals have.</summary>
internal static class InsideKeys
{
    /// <summary>More would be a pattern of holes.</summary>
    public const int MostRows = 8;

    public static Key HangsFrom { get; } = new("hangs_from", KeyKind.Choice, "The flat head that carries it")
    {
        Choices = ["top"],
        NotBuiltYet = ["bottom"],
        Default = "top",
    };

    public static ImmutableArray<Key> Holes { get; } =
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
        new("rows", KeyKind.Count,
            "Number of such rows, one above the other: a pattern round the tube") { Default = "1", Range = new(1, 50) },
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

    public static KeyMap Pattern { get; } = new("a pattern of holes", Holes);

    /// <summary>A name that may be left out while the part is the only one of its kind.</summary>
    public static Key Name(string kind) => new("name", KeyKind.Text, "Its name; needed where there are several")
    {
        Default = kind,
    };

    public static Key Fixed(string usual, params ImmutableArray<string> ways) =>
        new("fixed", KeyKind.Choice, "Way of holding it") { Choices = ways, Default = usual };
}
