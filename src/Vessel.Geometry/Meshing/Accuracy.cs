namespace Vessel.Geometry;

/// <summary>How closely facets follow a curve or surface.</summary>
/// <param name="Chord">Greatest distance between the true shape and the facets, mm.</param>
/// <param name="Angle">Greatest turn from one facet to the next along a curve, radians.</param>
public readonly record struct Accuracy(double Chord, double Angle)
{
    /// <summary>0.05 mm and 15 degrees: the default for solids.</summary>
    public static Accuracy Solids { get; } = new(0.05, Math.PI / 12);
}
