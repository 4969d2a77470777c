namespace Vessel.Function;

/// <summary>Oil that runs through a bore by its own height; SI units.</summary>
/// <remarks>
/// rho g h = 32 mu v L / D^2 + 1.5 rho v^2 / 2: laminar friction, sharp entry and exit. With nu = mu / rho it is
/// 0.75 v^2 + b v - g h = 0, b = 32 nu L / D^2, whose root is written without cancellation.
/// </remarks>
public static class OilFlow
{
    public const string Source = "Hagen-Poiseuille with sharp entry (0.5) and exit (1)";

    public const string Range = "laminar: Re below 2300; the hose runs full and falls all the way, without a trap of air";

    private const double Ends = 0.75;

    /// <summary>m/s; zero where there is no head.</summary>
    /// <param name="viscosity">Kinematic, m2/s.</param>
    public static double Speed(double head, double bore, double length, double viscosity)
    {
        if (head <= 0)
            return 0;
        var b = 32 * viscosity * length / (bore * bore);
        return 2 * Air.Gravity * head / (b + Math.Sqrt((b * b) + (4 * Ends * Air.Gravity * head)));
    }

    public static double Reynolds(double speed, double bore, double viscosity) => speed * bore / viscosity;
}
