namespace Vessel.Stock;

/// <summary>The kind of current of a TIG seam.</summary>
public enum WeldingCurrent
{
    /// <summary>Aluminium: the half waves with the electrode positive break its oxide.</summary>
    Alternating,

    /// <summary>Direct current, electrode negative: steels.</summary>
    ElectrodeNegative,
}

/// <summary>Which current a metal is welded on, and how it is written.</summary>
public static class WeldingCurrents
{
    public static WeldingCurrent Of(MaterialFamily family) =>
        family == MaterialFamily.Aluminium ? WeldingCurrent.Alternating : WeldingCurrent.ElectrodeNegative;

    /// <summary>For a table: <c>AC</c> or <c>DCEN</c>.</summary>
    public static string Short(this WeldingCurrent current) => current == WeldingCurrent.Alternating ? "AC" : "DCEN";

    /// <summary>For the bench.</summary>
    public static string Words(this WeldingCurrent current) =>
        current == WeldingCurrent.Alternating ? "AC (balance as the machine sets it)" : "DC electrode negative";
}
