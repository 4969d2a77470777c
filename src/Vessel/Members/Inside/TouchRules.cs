using Vessel.Findings;
using Vessel.Stock;

namespace Vessel.Members.Inside;

/// <summary>Unlike metals that touch in the wet.</summary>
internal static class TouchRules
{
    /// <summary>Null where the two do no harm to each other. Parts and place are the caller's.</summary>
    /// <param name="first">Null for copper or its alloys.</param>
    public static Measure? Of(string a, string b, MaterialFamily? first, MaterialFamily? second) =>
        MetalPairs.Of(first, second) is { } severity
            ? new(
                FindingCodes.UnlikeMetals,
                severity,
                [],
                () => $"{a} ({NameOf(first)}) touches {b} ({NameOf(second)}) where oil and water stand: the less noble metal corrodes; "
                + "choose one metal for both.",
                [],
                null)
            : null;

    private static string NameOf(MaterialFamily? family) => family switch
    {
        MaterialFamily.Aluminium => "aluminium",
        MaterialFamily.Stainless => "stainless",
        MaterialFamily.MildSteel => "mild steel",
        _ => "copper or its alloy",
    };
}
