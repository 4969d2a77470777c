using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>How edges that are joined edge to edge are prepared: see <see cref="Bevel"/>.</summary>
public static class EdgePreparation
{
    public static bool IsBevelled(JointKind kind, double wall) => kind != JointKind.Fillet && wall > Bevel.SquareTo;

    /// <summary>What the V takes beyond a square gap: (wall - root face)^2 tan(half angle), mm2.</summary>
    public static double Area(JointKind kind, double wall) => IsBevelled(kind, wall)
        ? (wall - Bevel.RootFace) * (wall - Bevel.RootFace) * Math.Tan(Bevel.HalfAngle)
        : 0;
}
