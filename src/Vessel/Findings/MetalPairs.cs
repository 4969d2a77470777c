using Vessel.Stock;

namespace Vessel.Findings;

/// <summary>How two metals bear each other in the wet.</summary>
internal static class MetalPairs
{
    /// <summary>Null when nothing is to be said. A null family is copper or brass. Common practice, no source.</summary>
    public static Severity? Of(MaterialFamily? a, MaterialFamily? b)
    {
        if (a == b)
            return null;
        // The least noble corrodes: aluminium beside any other, mild steel beside copper; stainless stains mild steel slowly.
        var withAluminium = a == MaterialFamily.Aluminium || b == MaterialFamily.Aluminium;
        return withAluminium ? Severity.Warning : Severity.Note;
    }
}
