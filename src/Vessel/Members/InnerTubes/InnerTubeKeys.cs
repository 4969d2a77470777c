using Vessel.Design;

namespace Vessel.Members.InnerTubes;

/// <summary>The keys of an inner tube.</summary>
internal static class InnerTubeKeys
{
    public static KeyMap InnerTube { get; } = new("a sleeve",
    [
        InsideKeys.Name("sleeve"),
        new("tube", KeyKind.Mapping, "Stock that it is cut from") { IsRequired = true, Map = CommonKeys.Tube },
        new("length", KeyKind.Length, "From the head's inner face to the lower end")
        {
            IsRequired = true, Range = CommonKeys.LengthOfPart,
        },
        InsideKeys.HangsFrom,
        InsideKeys.Fixed("weld", "weld", "tabs", "screws"),
        new("windows", KeyKind.OneOrList, "Openings in its wall, a row or several")
        {
            DefaultRule = "none", Map = InsideKeys.Windows, Items = new(0, InsideKeys.MostRows),
        },
        CommonKeys.Material,
    ]);
}
