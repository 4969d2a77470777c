using Vessel.Stock;

namespace Vessel.Function;

/// <summary>What the vessel has to hold: by what gathers between two drains, and by a rule book. L.</summary>
/// <param name="Hours">Running time between drains; zero where nothing is asked.</param>
/// <param name="Oil">Oil that an engine's gas brings, L an hour; null where nobody knows how much it is.</param>
/// <param name="Water">Water that the gas drops as it cools, L an hour; null where its flow or temperature tells nothing.</param>
internal sealed record Catch(double Hours, Amount? Oil, Amount? Water, double? ByRule, CatchRule? Rule)
{
    /// <summary>L an hour; null where neither is known.</summary>
    public Amount? Rate => Oil is { } oil ? Water is { } water ? oil + water : oil : Water;

    /// <summary>L; null where nothing is asked or known.</summary>
    public Amount? Gathered => Hours > 0 && Rate is { } rate ? Hours * rate : null;

    public static Catch Of(Assembly assembly, FlowPath? path)
    {
        var (design, flow) = (assembly.Design, assembly.Design.Flow);
        var rule = design.Capacity.Rule is { } name ? CatchRules.Find(name) : null;
        return new(
            design.Capacity.BetweenDrains,
            flow.Liquid.IsEngineOil ? 1 / flow.OilDensity * OilCarry.Rate : null,
            path is not null && Condensation.WaterLeft(path, design) is { } grams ? 1e-3 * grams : null,
            rule is not null && flow.Engine is { } engine ? rule.Volume(engine.Displacement) : null,
            rule);
    }

    /// <summary>
    /// Hours until a volume in L is full: low by the fastest rate, endless at the upper end where perhaps nothing gathers; null where no
    /// rate is known.
    /// </summary>
    public Amount? Lasts(double volume) =>
        Rate is { High: > 0 } rate ? new(volume / rate.High, volume / rate.Likely, volume / rate.Low) : null;
}
