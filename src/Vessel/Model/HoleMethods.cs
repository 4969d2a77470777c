namespace Vessel.Model;

/// <summary>
/// How a shop without a laser makes a hole: twist drills to 13 mm (the usual chuck), step drills to 35 mm, hole saws to
/// 152 mm (6 in), larger ones cut out and filed. Common practice, no source.
/// </summary>
public static class HoleMethods
{
    public const double DrillReach = 13;
    public const double StepDrillReach = 35;
    public const double HoleSawReach = 152;

    /// <summary>Windows with sharp corners are started with this drill, mm. Common practice, no source.</summary>
    public const double LeastCornerDrill = 3;

    public static HoleMethod Through(double diameter) => diameter switch
    {
        <= DrillReach => HoleMethod.Drill,
        <= StepDrillReach => HoleMethod.StepDrill,
        <= HoleSawReach => HoleMethod.HoleSaw,
        _ => HoleMethod.CutOrFile,
    };
}
