namespace Vessel.Export.Dxf;

/// <summary>How a flat is drawn.</summary>
/// <param name="Tolerance">Greatest distance between what is drawn and the exact outline, mm.</param>
/// <param name="CutOnly">Leave out all but the layer CUT, for services that merge layers.</param>
public sealed record DrawingOptions(DxfRelease Release = DxfRelease.R2000, double Tolerance = 0.01, bool CutOnly = false)
{
    /// <summary>Width of the cut, mm: the lines are drawn half of it off the part, on the waste side. Zero draws the part's
    /// own edges.</summary>
    public double Kerf { get; init; }

    /// <summary>Thickness of its sheet, mm, where the part is drawn hanging by tabs in a frame of it, if its outline takes one; see
    /// <see cref="CutFrame"/>. Null draws it alone.</summary>
    public double? InFrameOf { get; init; }
}
