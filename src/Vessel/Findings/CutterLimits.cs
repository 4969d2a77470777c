namespace Vessel.Findings;

/// <summary>
/// What a laser cutter takes, as shares of the thickness. Published shop rules disagree (0.5 to 1.5): warn below one
/// thickness (Tuan Thinh; for holes also SMS Laser), refuse holes below half of it (cutitout).
/// </summary>
internal static class CutterLimits
{
    private const double Aim = 1;
    private const double LeastHole = 0.5;

    /// <summary>Diameter of a hole in sheet of that thickness, mm.</summary>
    public static Allowed Hole(double thickness) => Allowed.AtLeast(Aim * thickness, LeastHole * thickness);

    /// <summary>Metal between two holes in sheet of that thickness, mm.</summary>
    public static Allowed Web(double thickness) => Allowed.AtLeast(Aim * thickness);
}
