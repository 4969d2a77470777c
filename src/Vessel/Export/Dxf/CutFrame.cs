using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Dxf;

/// <summary>
/// How wide slots, tabs and frame of a small part are. All common practice, no source: a tab as wide as the sheet is thick breaks off by
/// hand to 2 mm or so and holds from 1 mm; a slot takes a cut and its pierce; the frame stays flat.
/// </summary>
internal static class CutFrame
{
    private const double LeastTab = 1;
    private const double MostTab = 2;
    private const double LeastBand = 8;
    private const double BandShare = 3;

    /// <param name="below">Smaller both ways than this, mm.</param>
    /// <param name="thickness">Thickness of the sheet, mm.</param>
    public static bool IsFor(FittedFlat fitted, double below, double thickness) =>
        CurveMeasures.Bounds(fitted.Flat.Cut.Outer) is var box && Math.Max(box.Width, box.Height) < below
            && Of(fitted, thickness) is not null;

    /// <param name="thickness">Thickness of the sheet, mm.</param>
    /// <returns>Null where the outline takes none.</returns>
    public static HeldPart? Of(FittedFlat fitted, double thickness) => HeldPart.Of(
        (fitted.Outer as Stroke ?? ((Circle)fitted.Outer).AsStroke).Vertices,
        TabbedHole.SlotWidth(thickness), Math.Clamp(thickness, LeastTab, MostTab), Math.Max(LeastBand, BandShare * thickness));
}
