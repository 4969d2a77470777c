using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills what flows through from its sections; by the same rule as the whole design for values at fault.</summary>
internal static class FlowBuilder
{
    public static FlowDesign Build(Section flow, Section? engine) => Build(flow, engine, LiquidOf(flow));

    private static FlowDesign Build(Section flow, Section? engine, Liquid liquid) => new(
        flow.Path,
        flow.Has("blow_by") ? flow.Number("blow_by") : null,
        flow.Has("oil_density") ? flow.Number("oil_density") : liquid.Density(flow.Number("temperature")),
        flow.Number("temperature"))
    {
        Liquid = liquid,
        IsLiquidGiven = flow.Given.Contains("liquid") || flow.Given.Contains("own_liquid"),
        IsDensityGiven = flow.Has("oil_density"),
        OilViscosity = flow.Has("oil_viscosity") ? flow.Number("oil_viscosity") : null,
        Hose = flow.Has("hose_length") ? new(flow.Number("hose_length"), flow.Has("hose_bore") ? flow.Number("hose_bore") : null) : null,
        Surroundings = flow.Number("surroundings"),
        Pressure = flow.Number("pressure"),
        MostLoss = flow.Number("most_loss"),
        Order = flow.Texts("order"),
        Engine = engine is null ? null : new(
            engine.Path,
            engine.Number("displacement"),
            engine.Number("speed"),
            engine.Number("boost"),
            engine.Text("condition") == "worn" ? EngineCondition.Worn : EngineCondition.Sound),
    };

    private static Liquid LiquidOf(Section flow) =>
        (flow.Child("own_liquid") is { } own ? Own(own) : flow.Text("liquid") is { } name ? Liquids.Find(name) : null) ?? Liquids.Usual;

    /// <summary>Points by rising temperature; those at fault are left out; null with fewer than two.</summary>
    private static Liquid? Own(Section own)
    {
        ImmutableArray<(double Celsius, double Density, double Viscosity)> points =
        [
            .. own.Items("at").Select(at => (at.Number("temperature"), at.Number("density"), at.Number("viscosity")))
                .Where(at => double.IsFinite(at.Item1 + at.Item2 + at.Item3)).DistinctBy(at => at.Item1).OrderBy(at => at.Item1),
        ];
        var name = own.Text("name") ?? "liquid";
        return points.Length < 2 ? null : new(name, name, false, points, own.Text("source") ?? "the design")
        {
            Kind = Enum.TryParse<LiquidKind>(own.Text("like"), ignoreCase: true, out var kind) ? kind : LiquidKind.Other,
        };
    }
}
