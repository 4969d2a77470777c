using Vessel.Stock;

namespace Vessel.Function;

/// <summary>A round flat end, with a flange or without: it bends between a rim that is clamped and one that is free to turn.</summary>
internal static class FlatPlate
{
    public const string StressFormula =
        "the more of s = 3/4 p a^2 / t^2, at a rim that is clamped, and s = K 3 (3 + nu) / 8 p a^2 / t^2, in the middle where the rim is "
            + "free to turn";

    /// <summary>The more of a rim that is clamped and a middle whose rim is free to turn, MPa.</summary>
    /// <param name="hole">Factor of stress at the edge of a port over what is away from it; 1 where it has none.</param>
    /// <param name="radius">Half of the bore that it closes, mm.</param>
    public static double Stress(double pressure, double hole, double radius, double wall, Material metal) => Math.Max(
        ThinWalls.ClampedStress(pressure, radius, wall),
        hole * ThinWalls.SupportedStress(pressure, radius, wall, Strengths.Of(metal).Poisson));

    /// <summary>How far its middle stands out, mm.</summary>
    public static (double Clamped, double Supported) Bulge(double pressure, double radius, double wall, Material material)
    {
        var metal = Strengths.Of(material);
        var stiffness = ThinWalls.Stiffness(metal.Elasticity, metal.Poisson, wall);
        return (
            ThinWalls.ClampedDeflection(pressure, radius, stiffness),
            ThinWalls.SupportedDeflection(pressure, radius, stiffness, metal.Poisson));
    }
}
