using System.Collections.Immutable;
using Vessel.Export.Drawing;

namespace Vessel.Export.Dxf;

/// <summary>A layer says what a line is for, as its pen does; the colour only helps the eye.</summary>
internal sealed record DxfLayer(string Name, int Colour)
{
    public static ImmutableArray<DxfLayer> All { get; } =
        [new("0", 7), new(Of(Pens.Cut), 7), new(Of(Pens.Bend), 6), new(Of(Pens.Mark), 3), new(Of(Pens.Note), 8)];

    /// <summary>The name of a pen's layer.</summary>
    public static string Of(Pen pen) => pen.Name.ToUpperInvariant();
}
