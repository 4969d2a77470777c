using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Members.Brackets;

/// <summary>The keys under <c>bracket</c> that all its types have.</summary>
internal static class BracketKeys
{
    public static Key Name { get; } = new("name", KeyKind.Text, "Its name; needed where there are several")
    {
        Default = "bracket",
    };

    public static Key Height { get; } = new("height", KeyKind.Length, "Of the plate's middle, above the shell's lower edge")
    {
        IsRequired = true,
        Range = CommonKeys.FromZero,
    };

    public static ImmutableArray<Key> Bolts { get; } =
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

    public static Key Tabs { get; } = new("tabs", KeyKind.Mapping,
        "On each edge that meets the shell, for slots cut in its flat: they set the bracket")
    {
        DefaultRule = "none",
        Map = new("the tabs of a bracket",
        [
            new("count", KeyKind.Count, "On each edge") { IsRequired = true, Range = new(1, 20) },
            new("width", KeyKind.Length, "Of each, along the edge") { Default = "12 mm", Range = new(2, 1000) },
            new("clearance", KeyKind.Length, "All round in its slot") { Default = "0.1 mm", Range = new(0, 5) },
        ]),
    };
}
