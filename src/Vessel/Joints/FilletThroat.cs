namespace Vessel.Joints;

/// <summary>
/// The size of a fillet from the thinner wall: leg = wall on a right angle (common practice for sheet, no source), hence
/// throat = wall / sqrt 2, kept constant as the angle changes because strength goes by the throat.
/// </summary>
public static class FilletThroat
{
    /// <summary>Beyond this angle between the surfaces the weld is a groove (from memory: 60 to 135 degrees for fillets).</summary>
    public static double GreatestAngle { get; } = 135 * Math.PI / 180;

    /// <summary>
    /// True where the angle is too flat by more than rounding: a cone of 90 degrees meets a tube on its axis at the limit itself.
    /// </summary>
    public static bool IsTooFlat(double angle) => angle > GreatestAngle + 1e-9;

    public static double Of(double wall) => wall / Math.Sqrt(2);

    /// <summary>The leg on a right angle, mm.</summary>
    public static double Leg(double wall) => wall;
}
