namespace Vessel.Function;

/// <summary>What is set free when a test vessel bursts; Pa, m3, J.</summary>
/// <remarks>
/// Air that expands without heat: U = P V / (g - 1) (1 - (Pa / P)^((g - 1) / g)), g = 1.4; the bound with all the heat it can
/// take is P V ln(P / Pa). Water: p^2 V / 2K on the gauge pressure, K = 2.2 GPa.
/// </remarks>
public static class StoredEnergy
{
    public const string Source = "isentropic expansion, as ASME PCC-2 501-II; isothermal bound; water by its bulk modulus of 2.2 GPa";

    private const double Exponent = 0.4 / 1.4;

    private const double BulkModulus = 2.2e9;

    public static double Air(double gauge, double volume)
    {
        var pressure = Function.Air.Atmosphere + gauge;
        return pressure * volume / 0.4 * (1 - Math.Pow(Function.Air.Atmosphere / pressure, Exponent));
    }

    public static double AirIsothermal(double gauge, double volume)
    {
        var pressure = Function.Air.Atmosphere + gauge;
        return pressure * volume * Math.Log(pressure / Function.Air.Atmosphere);
    }

    public static double Water(double gauge, double volume) => gauge * gauge * volume / (2 * BulkModulus);
}
