namespace Vessel.Design;

/// <summary>The keys under <c>capacity</c>.</summary>
internal static class CapacityKeys
{
    /// <summary>The choice of no rule book.</summary>
    public const string NoRule = "none";

    public static KeyMap Capacity { get; } = new("the ways of standing for which the capacity is worked out",
    [
        new("greatest_lean", KeyKind.Angle, "The furthest that the vessel leans; 0 for upright alone")
        {
            Default = "30 deg", Range = new(0, 60),
        },
        new("lean_step", KeyKind.Angle, "From one lean to the next") { Default = "15 deg", Range = new(5, 60) },
        new("directions", KeyKind.Count, "Towards how many sides it leans, evenly round, the first to the front")
        {
            Default = "8", Range = new(1, 24),
        },
        new("sideways", KeyKind.Ratio, "Steady sideways acceleration as a share of gravity; 0 for none")
        {
            Default = "0", Range = new(0, 2),
        },
        new("table_step", KeyKind.Length, "From one level of the gauge table to the next")
        {
            Default = "10 mm", Range = new(0.5, 1000),
        },
        new("rule", KeyKind.Choice, "The rule book for its capacity, by the engine's displacement")
        {
            Choices = [NoRule, .. Stock.CatchRules.All.Select(rule => rule.Name)], Default = NoRule,
        },
        new("between_drains", KeyKind.Duration, "Running time from one drain to the next; 0 where nothing is asked")
        {
            Default = "0 hours", Range = new(0, 100_000),
        },
    ])
    {
        MayBeEmpty = true,
    };
}
