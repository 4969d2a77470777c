using Vessel.Design;

namespace Vessel.Function;

/// <summary>How much gas an engine blows past its pistons, where nobody has measured it.</summary>
public static class BlowBy
{
    public const string Source =
        "1 % of the air taken in (0.2 to 1 %: FISITA 2005, heavy-duty diesels), 90 % filling, warmed from 20 to 80 degC; boost multiplies "
            + "it [practice]";

    /// <summary>Source of the range as a whole.</summary>
    public const string RangeSource =
        "share of the air taken in: 0.2 to 1 % (FISITA 2005, heavy-duty diesels), worn rings 1 to 2 % (general reference); a charger's "
        + "seals add up to 40 % (DieselNet); 90 % filling and boost as a factor [practice]";

    /// <summary>Share of its displacement that an engine takes in. Common practice, no source.</summary>
    public const double Filling = 0.9;

    /// <summary>What the seals of a charger may add.</summary>
    public const double ChargerShare = 0.4;

    /// <summary>
    /// Upper end of the usual range for a sound four-stroke engine, L/min at 80 degC of air that was taken in at 20 (the temperatures that
    /// a first design has); a worn one exceeds it.
    /// </summary>
    /// <param name="displacement">L.</param>
    /// <param name="speed">Revolutions a minute.</param>
    /// <param name="boost">Bar above the air round it; zero without a charger.</param>
    public static double Of(double displacement, double speed, double boost) =>
        Swelling(20, 80, 0) * displacement * speed / 2 * Filling * (1 + boost) * 0.01;

    /// <summary>
    /// By what a litre taken in from the open has grown in the vessel: by its warmth and by less pressure. An engine breathes the air round
    /// the vessel.
    /// </summary>
    public static double Swelling(double surroundings, double temperature, double pressure) =>
        Air.Kelvin(temperature) / Air.Kelvin(surroundings) * Air.Atmosphere / (Air.Atmosphere + pressure);

    /// <summary>L/min as it was in the open, of a four-stroke engine.</summary>
    public static Amount Of(EngineDesign engine)
    {
        var intake = Intake(engine);
        var share = Share(engine.Condition);
        return new(share.Low * intake, share.Likely * intake, share.High * intake * (engine.Boost > 0 ? 1 + ChargerShare : 1));
    }

    /// <summary>Air taken in by a four-stroke engine, L/min as it is in the open.</summary>
    public static double Intake(EngineDesign engine) =>
        engine.Displacement * engine.Speed / 2 * Filling * (1 + (engine.Boost / Air.Atmosphere));

    public static Amount Share(EngineCondition condition) =>
        condition == EngineCondition.Worn ? new(0.01, 0.015, 0.02) : new(0.002, 0.005, 0.01);
}
