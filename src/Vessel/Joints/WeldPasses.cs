namespace Vessel.Joints;

/// <summary>
/// Into how many passes a weld is laid: one lays at most 12 mm2, the section of a fillet with legs of 4.9 mm. Common
/// practice for TIG by hand, no source.
/// </summary>
public static class WeldPasses
{
    /// <summary>mm2.</summary>
    public const double MostArea = 12;

    public static int Of(WeldFigures weld) =>
        weld.Length > 0 ? Math.Max(1, (int)Math.Ceiling(Math.Min(1000, (weld.Deposit / weld.Length / MostArea) - 1e-6))) : 1;
}
