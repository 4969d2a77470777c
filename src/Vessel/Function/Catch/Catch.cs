using Vessel.Stock;

namespace Vessel.Function;

/// <summary>What the vessel has to hold: by the oil that gathers between two drains, and by a rule book. L.</summary>
/// <param name="Needed">The greater of the two; null where neither is asked for.</param>
internal sealed record Catch(double? Gathered, double? ByRule, CatchRule? Rule)
{
    public double? Needed => Gathered is null ? ByRule : ByRule is null ? Gathered : Math.Max(Gathered.Value, ByRule.Value);

    public static Catch Of(Assembly assembly)
    {
        var design = assembly.Design;
        var rule = design.Capacity.Rule is { } name ? CatchRules.Find(name) : null;
        return new(
            design.Capacity.BetweenDrains > 0 ? OilCarry.Of(design.Capacity.BetweenDrains) : null,
            rule is not null && design.Flow.Engine is { } engine ? rule.Volume(engine.Displacement) : null,
            rule);
    }
}
