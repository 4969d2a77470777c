namespace Vessel.Findings;

/// <summary>
/// How far edges may stand apart before a TIG weld on thin wall, mm: aim for a quarter of the wall, refuse over half of it
/// or 1 mm. Common practice, no source.
/// </summary>
internal static class RootGap
{
    private const double AimShare = 0.25;
    private const double MostShare = 0.5;
    private const double Limit = 1;

    public static double Aim(double wall) => AimShare * wall;

    public static double Most(double wall) => Math.Min(MostShare * wall, Limit);
}
