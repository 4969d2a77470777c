using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Keys and ranges that stand in several mappings.</summary>
internal static class CommonKeys
{
    public static KeyRange Diameter { get; } = new(5, 10_000);

    public static KeyRange Wall { get; } = new(0.3, 25);

    public static KeyRange LengthOfPart { get; } = new(1, 10_000);

    public static KeyRange FromZero { get; } = new(0, 10_000);

    public static KeyRange Gap { get; } = new(0, 5);

    public static KeyRange Sheets { get; } = new(1, SheetSeams.Most);

    public static KeyRange Turn { get; } = new(-360, 360);

    /// <summary>Place of a bend's neutral line as a share of the thickness from the inside.</summary>
    public static KeyRange NeutralLine { get; } = new(0.2, 0.6);

    public static ImmutableArray<string> TruthValues { get; } = ["false", "true"];

    public static Key Material { get; } = new("material", KeyKind.Material, "Metal of this part")
    {
        DefaultRule = "the file's material",
    };

    public static Key Angle { get; } = new("angle", KeyKind.Angle, "Counter-clockwise from above; 0 is the front")
    {
        Default = "0 deg",
        Range = Turn,
    };

    /// <summary>What <see cref="Bevel.UsualGap"/> does.</summary>
    public static string RootGapRule { get; } = FormattableString.Invariant(
        $"0 mm; {Bevel.Opening} mm where the wall is over {Bevel.SquareTo} mm and its edges are bevelled [practice]");

    public static KeyMap Tube { get; } = new("a tube",
    [
        new("outside_diameter", KeyKind.Length, "Outside diameter") { IsRequired = true, Range = new(2, 10_000) },
        new("wall", KeyKind.Length, "Wall thickness") { IsRequired = true, Range = Wall, TubeWhen = new("outside_diameter", null) },
        new("section", KeyKind.Choice, "Shape of its cross-section")
        {
            Choices = ["round"], NotBuiltYet = ["square", "rectangular", "rectangle", "oval"], Default = "round",
        },
    ])
    {
        NotBuiltYet = (["width", "height", "depth", "side", "sides"], "square or rectangular tube"),
    };
}
