using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>Voltage of a TIG arc and the heat that it leaves in the seam.</summary>
/// <remarks>
/// Heat input Q = k U I / v, k = 0.6 for TIG (EN 1011-1). Where no voltage is measured it is taken, from memory, as what a short arc in
/// argon takes with the electrode negative: 9.5 V + 0.01 V/A to 10 V + 0.02 V/A, which is 10.5 to 12 V at 100 A. On alternating current the
/// half waves with the electrode positive, and helium in the gas, take more: at most the conventional load voltage of TIG sources, 10 V +
/// 0.04 V/A (IEC 60974-1, from memory), which has the cables' loss in it.
/// </remarks>
public static class ArcHeat
{
    private const double Efficiency = 0.6;

    private const double SecondsPerMinute = 60;

    private const double JoulesPerKilojoule = 1000;

    public static string Source(WeldingCurrent current) => current == WeldingCurrent.Alternating
        ? "0.6 U I / v, EN 1011-1; U between 9.5 V + 0.01 V/A and 10 V + 0.04 V/A (not checked against the source: measure it); low to "
            + "high by the table's amps"
        : "0.6 U I / v, EN 1011-1; U between 9.5 V + 0.01 V/A and 10 V + 0.02 V/A, a short arc in argon (not checked against the source: "
            + "measure it); low to high by the table's amps";

    /// <summary>Least and greatest of the arc, V.</summary>
    public static (double Low, double High) Volts(double amps, WeldingCurrent current) =>
        (9.5 + (0.01 * amps), 10 + ((current == WeldingCurrent.Alternating ? 0.04 : 0.02) * amps));

    /// <summary>kJ/mm.</summary>
    /// <param name="travel">mm/min.</param>
    public static double Input(double volts, double amps, double travel) =>
        Efficiency * volts * amps / (travel / SecondsPerMinute) / JoulesPerKilojoule;
}
