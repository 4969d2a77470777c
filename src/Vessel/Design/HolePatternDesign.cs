namespace Vessel.Design;

/// <summary>The arrangement of equal holes.</summary>
public enum HolePattern
{
    Staggered60,
    Staggered45,
    Square,
    Rings,
}

/// <summary>Equal round holes by rule; only whole ones inside the margin.</summary>
/// <param name="Pitch">Least distance of centres, mm.</param>
/// <param name="Margin">Distance from hole edge to the plate's edge, and to a bore's, mm.</param>
public sealed record HolePatternDesign(string Path, double HoleDiameter, double Pitch, HolePattern Pattern, double Margin);
