using Vessel.Design;

namespace Vessel.Heads;

/// <summary>Keys that several kinds of head have.</summary>
internal static class CommonHeadKeys
{
    public static Key Wall { get; } = new("wall", KeyKind.Length, "Wall thickness")
    {
        DefaultRule = "the shell's wall",
        Range = CommonKeys.Wall,
    };

    public static Key Flange { get; } = new("flange", KeyKind.Length, "Height of the straight flange at its rim")
    {
        Default = "0 mm",
        Range = CommonKeys.FromZero,
    };
}
