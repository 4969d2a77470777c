namespace Vessel.Stock;

/// <summary>
/// How a metal takes up heat and how hot it may be when the next weld is begun. From memory; round figures of the family.
/// </summary>
/// <param name="Capacity">Heat that warms a cubic millimetre by a kelvin, J.</param>
/// <param name="Diffusivity">How fast heat spreads, mm2/s.</param>
/// <param name="CoolBelow">Temperature below which the next pass or weld is begun, degrees Celsius; common practice, no source.</param>
public sealed record Thermal(double Capacity, double Diffusivity, double CoolBelow)
{
    public static Thermal Of(MaterialFamily family) => family switch
    {
        // 900 J/(kg K) and 140 to 170 W/(m K); 500 and 16; 480 and 50.
        MaterialFamily.Aluminium => new(2.43e-3, 62, 60),
        MaterialFamily.Stainless => new(3.97e-3, 4, 150),
        _ => new(3.77e-3, 13, 250),
    };
}
