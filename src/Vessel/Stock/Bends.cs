namespace Vessel.Stock;

/// <summary>How sheet metal stretches in a bend.</summary>
public static class Bends
{
    /// <summary>
    /// Where a bend's neutral line lies, as a share of the thickness from the inside. A right angle of inside radius R
    /// in a sheet T takes 0.64 T + 1.57 R of soft steel or aluminium, which is pi/2 (R + 0.41 T), and 0.71 T + 1.57 R of
    /// hard sheet, which is pi/2 (R + 0.45 T).
    /// </summary>
    public static Datum NeutralLine(MaterialFamily family) => family == MaterialFamily.Stainless
        ? new(0.45,
            "Machinery's Handbook 31, bends in hard sheet, to two figures; that stainless behaves as such, not checked against the source")
        : new(0.41, "Machinery's Handbook 31, bends in soft steel and aluminium, to two figures");
}
