namespace Vessel.Function;

/// <summary>The speed at which a mesh pad begins to let oil through: v = K sqrt((rho_p - rho) / rho).</summary>
public static class SoudersBrown
{
    public const string Source = "K = 0.107 m/s for a level mesh pad near the pressure of the air (Souders and Brown; York)";

    /// <summary>m/s, near the pressure of the air.</summary>
    public const double Constant = 0.10668;

    /// <summary>m/s.</summary>
    public static double Speed(double constant, double oilDensity, double gasDensity) =>
        constant * Math.Sqrt((oilDensity - gasDensity) / gasDensity);
}
