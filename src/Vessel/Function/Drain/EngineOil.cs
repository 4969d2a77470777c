namespace Vessel.Function;

/// <summary>A usual engine oil, where the design does not say which.</summary>
/// <remarks>
/// Walther's law (ASTM D341): log10 log10 (v + 0.7) falls on a line over log10 T; here through 100 mm2/s at 40 degC and
/// 11 at 100 degC, an oil about as thick as SAE 30.
/// </remarks>
public static class EngineOil
{
    public const string Source = "Walther's law (ASTM D341) through 100 mm2/s at 40 degC and 11 at 100 degC: common practice for an oil about as thick as SAE 30";

    private const double Warm = 40;

    private const double Hot = 100;

    private const double AtWarm = 100;

    private const double AtHot = 11;

    /// <summary>Greatest value that is told, mm2/s: beyond it an oil no longer pours.</summary>
    private const double Stiff = 1e5;

    /// <summary>Kinematic, mm2/s.</summary>
    public static double Viscosity(double celsius)
    {
        double Height(double viscosity) => Math.Log10(Math.Log10(viscosity + 0.7));
        double Over(double at) => Math.Log10(Air.Kelvin(at));
        var slope = (Height(AtHot) - Height(AtWarm)) / (Over(Hot) - Over(Warm));
        var height = Height(AtWarm) + (slope * (Over(celsius) - Over(Warm)));
        return Math.Min(Stiff, Math.Pow(10, Math.Pow(10, height)) - 0.7);
    }
}
