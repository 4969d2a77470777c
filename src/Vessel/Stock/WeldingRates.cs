using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Rates of welding by hand.</summary>
public static class WeldingRates
{
    public const string Practice = "[practice]";

    public static WorkRate ArcShare { get; } = new(
        "arc_share", "Arc time as a share of elapsed welding time", "share", 0.10, 0.20, 0.30,
        "[practice] for manual TIG: published shares are for other processes");

    public static ImmutableArray<WorkRate> All { get; } = [ArcShare];
}
