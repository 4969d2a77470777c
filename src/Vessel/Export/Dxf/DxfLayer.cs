using System.Collections.Immutable;

namespace Vessel.Export.Dxf;

/// <summary>What a line is for; the colour only helps the eye.</summary>
internal sealed record DxfLayer(string Name, int Colour)
{
    public const string Cut = "CUT";
    public const string Bend = "BEND";
    public const string Mark = "MARK";
    public const string Note = "NOTE";

    public static ImmutableArray<DxfLayer> All { get; } =
        [new("0", 7), new(Cut, 7), new(Bend, 6), new(Mark, 3), new(Note, 8)];
}
