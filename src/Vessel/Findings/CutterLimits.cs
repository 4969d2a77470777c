namespace Vessel.Findings;

/// <summary>
/// What a laser cutter takes, as shares of the thickness. Published shop rules disagree (0.5 to 1.5): warn below one
/// thickness (Tuan Thinh; for holes also SMS Laser), refuse holes below half of it (cutitout).
/// </summary>
internal static class CutterLimits
{
    public const double Aim = 1;
    public const double LeastHole = 0.5;
}
