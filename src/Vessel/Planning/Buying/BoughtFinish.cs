using Vessel.Design;

namespace Vessel.Planning;

/// <summary>Which finishes a small shop sends out. Common practice, no source.</summary>
internal static class BoughtFinish
{
    /// <summary>The line of a quote; null where the shop does it itself or there is none.</summary>
    public static string? Of(Finish finish) => finish switch
    {
        Finish.PowderCoated => "powder coating",
        Finish.Anodised => "anodising",
        _ => null,
    };
}
