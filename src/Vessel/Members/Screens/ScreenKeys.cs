using Vessel.Design;

namespace Vessel.Members.Screens;

/// <summary>The keys of a screen.</summary>
internal static class ScreenKeys
{
    public static KeyMap Place { get; } = new("the place of a disc",
    [
        new("height", KeyKind.Length, "Of its lower face, above the shell's lower edge")
        {
            IsRequired = true, Range = CommonKeys.FromZero,
        },
    ]);

    public static KeyMap Screen { get; } = new("a disc",
    [
        new("name", KeyKind.Text, "Its name; also part of file names") { IsRequired = true },
        new("fits", KeyKind.Text, "Name of the sleeve that it stands in, or 'shell'")
        {
            DefaultRule = "the sleeve where there is just one, else the shell",
        },
        new("at", KeyKind.Mapping, "Where it stands") { IsRequired = true, Map = Place },
        new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
        new("clearance", KeyKind.Length, "Clearance to its bore, all round; below zero it is pressed in")
        {
            Default = "0.2 mm", Range = new(-0.5, 5),
        },
        InsideKeys.Fixed("tabs", "weld", "tabs", "screws", "press", "loose"),
        .. InsideKeys.Holes,
        new("bore", KeyKind.Length, "Diameter of an opening in the middle, for a tube; 0 for none")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        CommonKeys.Material,
    ]);
}
