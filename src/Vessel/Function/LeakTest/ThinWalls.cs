namespace Vessel.Function;

/// <summary>Thin shells and plates under a small pressure; MPa and mm.</summary>
/// <remarks>
/// Cylinder: hoop p D / 2t, lengthwise p D / 4t on the mean diameter; sphere p D / 4t; 2:1 ellipsoid as the
/// cylinder; torisphere p L (3 + sqrt(L / r)) / 8t; cone p D / 2t cos(a). Flat disc of radius a: clamped,
/// w = p a^4 / 64 D and 3/4 p a^2 / t^2 at the rim; simply supported, w (5 + nu) / (1 + nu) times that and
/// 3 (3 + nu) / 8 p a^2 / t^2 in the middle; D = E t^3 / 12 (1 - nu^2). A welded lid lies between.
/// Collapse of a cylinder: Windenburg and Trilling 1934, p = 2.42 E (t/D)^2.5 / ((1 - nu^2)^0.75 (L/D - 0.45 (t/D)^0.5)), and no
/// less than a long tube's 2 E / (1 - nu^2) (t/D)^3; of a sphere: 1.21 E (t/R)^2.
/// </remarks>
public static class ThinWalls
{
    public const string ThinSource = "thin shells (Civil Engineering Handbook, 2nd ed., eq. 47.72 to 47.76)";

    public const string DishSource = "thin shells; dishes by the forms of ASME VIII-1 UG-32 without a joint's efficiency (not checked "
        + "against the source)";

    public const string PlateSource = "elastic discs, clamped and simply supported (Roark; Civil Engineering Handbook)";

    public const string CollapseSource =
        "cylinder: Windenburg and Trilling 1934; long tube and sphere: classical (none checked against the source); shells that are not "
        + "quite round bear 0.2 to 1 "
        + "of it, likely 0.5 [practice]";

    public const string HoleSource =
        "a small open hole: under even tension from all sides or even bending the stress at its edge doubles, in a cylinder it is 3 - 1/2 "
        + "times that round it "
        + "(Kirsch; derived); the tube that is welded into it stiffens it, which is left out";

    /// <summary>
    /// Stress at the edge of a small hole over that away from it, where that is alike in all directions: membrane or bending.
    /// </summary>
    public const double HoleEvenly = 2;

    /// <summary>Stress at the edge of a small hole over the stress round a cylinder, where half of it pulls lengthwise: 3 - 1/2.</summary>
    public const double HoleInCylinder = 2.5;

    public static double Hoop(double pressure, double meanDiameter, double wall) => pressure * meanDiameter / (2 * wall);

    /// <summary>Stress along a cylinder, and in a sphere, in the unit of the pressure.</summary>
    public static double Lengthwise(double pressure, double meanDiameter, double wall) => pressure * meanDiameter / (4 * wall);

    /// <summary>Stress in a dish with a spherical crown and a knuckle, inside radii, in the unit of the pressure.</summary>
    public static double Torisphere(double pressure, double crown, double knuckle, double wall) =>
        pressure * crown * (3 + Math.Sqrt(crown / knuckle)) / (8 * wall);

    /// <summary>Round a cone, on its diameter at the wide end.</summary>
    public static double Cone(double pressure, double diameter, double wall, double halfAngle) =>
        pressure * diameter / (2 * wall * Math.Cos(halfAngle));

    /// <summary>N mm.</summary>
    public static double Stiffness(double elasticity, double poisson, double wall) =>
        elasticity * wall * wall * wall / (12 * (1 - (poisson * poisson)));

    public static double ClampedDeflection(double pressure, double radius, double stiffness) =>
        pressure * Math.Pow(radius, 4) / (64 * stiffness);

    public static double SupportedDeflection(double pressure, double radius, double stiffness, double poisson) =>
        ClampedDeflection(pressure, radius, stiffness) * (5 + poisson) / (1 + poisson);

    /// <summary>Stress at the rim.</summary>
    public static double ClampedStress(double pressure, double radius, double wall) => 0.75 * pressure * radius * radius / (wall * wall);

    public static double ClampedMiddleStress(double pressure, double radius, double wall, double poisson) =>
        0.375 * (1 + poisson) * pressure * radius * radius / (wall * wall);

    /// <summary>Stress in the middle.</summary>
    public static double SupportedStress(double pressure, double radius, double wall, double poisson) =>
        0.375 * (3 + poisson) * pressure * radius * radius / (wall * wall);

    /// <summary>MPa of suction at which a perfect cylinder collapses.</summary>
    public static double CylinderCollapse(double diameter, double wall, double length, double elasticity, double poisson)
    {
        var (slender, square) = (wall / diameter, 1 - (poisson * poisson));
        var longTube = 2 * elasticity / square * Math.Pow(slender, 3);
        var free = (length / diameter) - (0.45 * Math.Sqrt(slender));
        return free <= 0 ? double.PositiveInfinity
            : Math.Max(longTube, 2.42 * elasticity * Math.Pow(slender, 2.5) / (Math.Pow(square, 0.75) * free));
    }
}
