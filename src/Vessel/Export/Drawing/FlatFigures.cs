using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Drawing;

/// <summary>Figures of what is cut, for quoting and for the summary. Of the exact outline, but for the last two.</summary>
/// <param name="WidthMm">Along x.</param>
/// <param name="HeightMm">Along y.</param>
/// <param name="AreaMm2">Area of metal; what a lapping wrap shows twice is counted once.</param>
/// <param name="CutLengthMm">Length of all outlines.</param>
/// <param name="Holes">Closed outlines inside the outer one.</param>
/// <param name="Entities">Lines and arcs drawn; a circle is one.</param>
/// <param name="DeviationMm">Greatest distance between what is drawn, cut or scribed, and the exact line.</param>
public sealed record FlatFigures(
    double WidthMm,
    double HeightMm,
    double AreaMm2,
    double CutLengthMm,
    int Holes,
    int Entities,
    double DeviationMm)
{
    /// <summary>Closed outlines: each starts with a pierce.</summary>
    public int Pierces => 1 + Holes;

    public static FlatFigures Of(FittedFlat fitted)
    {
        var flat = fitted.Flat;
        var bounds = CurveMeasures.Bounds(flat.Cut.Outer);
        return new(
            bounds.Width,
            bounds.Height,
            CurveMeasures.Area(flat.Cut) - flat.LapArea,
            CurveMeasures.Length(flat.Cut),
            flat.Cut.Holes.Length + flat.Cut.FieldHoles,
            fitted.Entities,
            fitted.Deviation);
    }
}
