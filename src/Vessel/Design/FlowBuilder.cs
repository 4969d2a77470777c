using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills what flows through from its sections; by the same rule as the whole design for values at fault.</summary>
internal static class FlowBuilder
{
    public static FlowDesign Build(Section flow, Section? engine) => new(
        flow.Path,
        flow.Has("blow_by") ? flow.Number("blow_by") : null,
        flow.Has("oil_density") ? flow.Number("oil_density") : LiquidOf(flow).Density(flow.Number("temperature")),
        flow.Number("temperature"))
    {
        Liquid = LiquidOf(flow),
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

    private static Liquid LiquidOf(Section flow) => flow.Text("liquid") is { } name ? Liquids.Find(name) ?? Liquids.Usual : Liquids.Usual;
}
