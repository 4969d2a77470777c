namespace Vessel.Joints;

/// <summary>
/// How edges that are joined edge to edge are prepared: square to 1/8 in (the limit of a square butt that is welded from
/// one side), from there a V of 60 degrees that leaves a root face of 1.5 mm. Common practice, no source.
/// </summary>
public static class EdgePreparation
{
    /// <summary>mm.</summary>
    public const double SquareTo = 3.2;

    /// <summary>mm.</summary>
    public const double RootFace = 1.5;

    /// <summary>Half of the V's angle, radians.</summary>
    public const double HalfAngle = Math.PI / 6;

    public static bool IsBevelled(JointKind kind, double wall) => kind != JointKind.Fillet && wall > SquareTo;

    /// <summary>What the V takes beyond a square gap: (wall - root face)^2 tan(half angle), mm2.</summary>
    public static double Area(JointKind kind, double wall) => IsBevelled(kind, wall)
        ? (wall - RootFace) * (wall - RootFace) * Math.Tan(HalfAngle)
        : 0;
}
