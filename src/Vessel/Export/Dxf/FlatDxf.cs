using System.Collections.Immutable;
using Vessel.Export.Drawing;

namespace Vessel.Export.Dxf;

/// <summary>The drawing that the cutter gets: millimetres, outside face up.</summary>
public static class FlatDxf
{
    /// <exception cref="OutputException">The kerf is wider than an edge of the part lets it be.</exception>
    public static void Write(FittedFlat fitted, DrawingOptions options, Stream to)
    {
        var off = options.Kerf / 2;
        var held = options.InFrameOf is { } thickness ? CutFrame.Of(fitted, thickness) : null;
        Item[] cut = [.. FlatDrawing.Fields(fitted, off), .. FlatDrawing.Kerf(fitted, held, off)];
        Item[] drawn = options.CutOnly ? cut : [.. cut, .. FlatDrawing.Bends(fitted.Flat), .. fitted.Marks];
        DxfDocument.Write([.. drawn, .. options.CutOnly ? [] : Notes(fitted.Flat.Notes, drawn)], options.Release, to);
    }

    /// <summary>Lines of text below what is drawn, as high as suits its size.</summary>
    internal static IEnumerable<Item> Notes(ImmutableArray<string> notes, IEnumerable<Item> drawn)
    {
        var above = DxfEntities.Bounds(drawn);
        var height = Math.Clamp(Math.Max(above.Width, above.Height) / 40, 2.5, 5);
        return notes.Select((line, i) => Text.Left(line, above.Min - new Geometry.Point2(0, height * (2.5 + (1.6 * i))), height));
    }
}
