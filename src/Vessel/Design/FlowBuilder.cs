namespace Vessel.Design;

/// <summary>Fills what flows through from its sections; see <see cref="DesignBuilder"/> for values at fault.</summary>
internal static class FlowBuilder
{
    public static FlowDesign Build(Section flow, Section? engine) => new(
        flow.Path,
        flow.Has("blow_by") ? flow.Number("blow_by") : null,
        flow.Number("oil_density"),
        flow.Number("temperature"))
    {
        OilViscosity = flow.Has("oil_viscosity") ? flow.Number("oil_viscosity") : null,
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
}
