namespace Vessel.Geometry;

/// <summary>Lengths in a circle.</summary>
public static class Circles
{
    /// <summary>Half of the chord at a distance from the middle, without cancellation near the rim; NaN beyond it.</summary>
    public static double HalfChord(double radius, double aside) => Math.Sqrt((radius - aside) * (radius + aside));
}
