namespace Vessel.Function;

/// <summary>Dry air, which stands for blow-by gas: that is mostly nitrogen too.</summary>
public static class Air
{
    public const string Source = "US Standard Atmosphere 1976, not checked against the source";

    /// <summary>Pa.</summary>
    public const double Atmosphere = 101_325;

    public const double Gravity = 9.80665;

    /// <summary>J/(kg K), of air of room warmth; 1 % more at 150 degC.</summary>
    public const double Heat = 1005;

    private const double Zero = 273.15;

    private const double GasConstant = 287.053;

    public static double Kelvin(double celsius) => celsius + Zero;

    /// <summary>kg/m3.</summary>
    /// <param name="pressure">Absolute, Pa.</param>
    public static double Density(double celsius, double pressure) => pressure / (GasConstant * Kelvin(celsius));

    /// <summary>
    /// Mean free path, m: mu = 0.499 rho c l with the mean speed c = sqrt(8 R T / pi) (kinetic theory of gases, Chapman and Enskog).
    /// </summary>
    public static double FreePath(double celsius, double density, double viscosity) =>
        viscosity / (0.499 * density * Math.Sqrt(8 * GasConstant * Kelvin(celsius) / Math.PI));

    /// <summary>Pa s, by Sutherland's formula.</summary>
    public static double Viscosity(double celsius)
    {
        var t = Kelvin(celsius);
        return 1.458e-6 * Math.Pow(t, 1.5) / (t + 110.4);
    }
}
