namespace Vessel.Function;

/// <summary>How much gas an engine blows past its pistons, where nobody has measured it.</summary>
public static class BlowBy
{
    public const string Source =
        "1 % of the air taken in (0.2 to 1 %: FISITA 2005, heavy-duty diesels), 90 % filling; boost multiplies it: common practice, no source";

    /// <summary>Upper end of the usual range for a sound four-stroke engine, L/min; a worn one exceeds it.</summary>
    /// <param name="displacement">L.</param>
    /// <param name="speed">Revolutions a minute.</param>
    /// <param name="boost">Bar above the air round it; zero without a charger.</param>
    public static double Of(double displacement, double speed, double boost) =>
        displacement * speed / 2 * 0.9 * (1 + boost) * 0.01;
}
