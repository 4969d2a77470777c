namespace Vessel.Planning;

/// <summary>Voltage of a TIG arc and the heat that it leaves in the seam.</summary>
/// <remarks>
/// Heat input Q = k U I / v, k = 0.6 for TIG (EN 1011-1). Where no voltage is measured it is taken as U = 10 + 0.04 I, the
/// conventional load voltage of TIG sources (IEC 60974-1, from memory).
/// </remarks>
public static class ArcHeat
{
    public const string Source =
        "0.6 U I / v, EN 1011-1; U = 10 V + 0.04 V/A, IEC 60974-1 (from memory); low to high by the table's amps";

    private const double Efficiency = 0.6;

    public static double Volts(double amps) => 10 + (0.04 * amps);

    /// <summary>kJ/mm.</summary>
    /// <param name="travel">mm/min.</param>
    public static double Input(double amps, double travel) =>
        Efficiency * Volts(amps) * amps / (travel / SecondsPerMinute) / JoulesPerKilojoule;

    private const double SecondsPerMinute = 60;

    private const double JoulesPerKilojoule = 1000;
}
