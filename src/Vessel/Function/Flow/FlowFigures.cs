using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Function;

/// <summary>The chapter on flow.</summary>
internal static class FlowFigures
{
    /// <summary>Beyond this air is no longer reckoned as if its density stayed, m/s.</summary>
    private const double Fastest = 100;

    public static FigureGroup Of(FlowPath path, FlowDesign design) => new(
        "flow",
        "Flow of gas",
        [.. Figures(path, design)],
        [Stages(path)],
        [.. Words(path, design)]);

    private static IEnumerable<Figure> Figures(FlowPath path, FlowDesign design)
    {
        var gas = path.Gas;
        var temperature = new FigureInput("T", "temperature of the gas", design.Temperature, "degC", "flow.temperature");
        var pressure = new FigureInput("p", "pressure, absolute", Air.Atmosphere + design.Pressure, "Pa", "flow.pressure");
        yield return new(
            "gas-density", "rho", "density of the gas", gas.Density, "kg/m3", "rho = p / (287.053 (T + 273.15))",
            [temperature, pressure], Air.Source, Validity.Always);
        yield return new(
            "gas-viscosity", "mu", "viscosity of the gas", gas.Viscosity * 1e6, "uPa s",
            "mu = 1.458e-6 (T + 273.15)^1.5 / (T + 383.55) Pa s",
            [temperature], Air.Source, new("-100 to 1500 degC, dry air", true));
        if (gas.Flow is not { } flow)
            yield break;
        yield return Flow(flow, design);
        var speed = flow.Through(path.Smallest.Velocity);
        yield return new(
            "smallest-stage", "A", $"area of the smallest stage, '{path.Smallest.Name}'", path.Smallest.Area, "mm2",
            "least of the open areas along the gas path", [], "the vessel's own geometry", Validity.Always);
        yield return new(
            "greatest-speed", "v", $"speed of the gas in '{path.Smallest.Name}'", speed, "m/s", "v = Q / A",
            [FlowInput(flow), new("A", "its area", path.Smallest.Area, "mm2", "smallest-stage")],
            "definition", new($"below {Fastest} m/s, where gas hardly thins out", speed.High < Fastest));
        yield return new(
            "gas-loss", "dp", $"loss of pressure from {path.From} to '{path.Vent}'", path.Loss!.Value, "Pa",
            "dp = sum over the stages of zeta rho v^2 / 2, friction, and creeping flow at small holes and fibres",
            [
                FlowInput(flow),
                new("rho", "density of the gas", gas.Density, "kg/m3", "gas-density"),
                new("mu", "viscosity of the gas", gas.Viscosity * 1e6, "uPa s", "gas-viscosity"),
            ],
            StageLoss.Source,
            new(StageLoss.Range, path.Stages.All(stage => stage.Reynolds(flow.Likely, gas) >= 1e4) && speed.High < Fastest));
    }

    public static FigureInput FlowInput(Amount flow) =>
        new("Q", "flow of gas", MovingGas.LitresPerMinute * flow, "L/min", "gas-flow");

    private static Figure Flow(Amount flow, FlowDesign design)
    {
        var shown = MovingGas.LitresPerMinute * flow;
        if (design.BlowBy is not null || design.Engine is not { } engine)
        {
            return new(
                "gas-flow", "Q", "flow of gas", shown, "L/min", "as the design gives it",
                [new("Q", "flow of gas", shown, "L/min", "flow.blow_by")], "the design", Validity.Always);
        }

        return new(
            "gas-flow", "Q", "flow of gas, estimated from the engine", shown, "L/min",
            "Q = s V n / 2 x 0.9 (1 + b / 101325) (T + 273.15) / (Ta + 273.15) 101325 / p, and 1.4 times that at the upper end with a "
                + "charger",
            [
                new("V", "displacement", engine.Displacement, "L", "engine.displacement"),
                new("n", "speed", engine.Speed, "rpm", "engine.speed"),
                new("b", "boost", engine.Boost, "Pa", "engine.boost"),
                new("s", "share blown by", BlowBy.Share(engine.Condition), "", "engine.condition"),
                new("T", "temperature of the gas", design.Temperature, "degC", "flow.temperature"),
                new("Ta", "temperature of the air taken in", design.Surroundings, "degC", "flow.surroundings"),
                new("p", "pressure, absolute", Air.Atmosphere + design.Pressure, "Pa", "flow.pressure"),
            ],
            BlowBy.RangeSource,
            new("four-stroke engines; a worn or damaged one exceeds any range", true));
    }

    private static FigureTable Stages(FlowPath path)
    {
        var flow = path.Gas.Flow;
        var losses = flow is { } q ? path.Losses(q) : [];
        return new(
            "stages",
            "Stages of the gas path",
            "stage",
            [
                new("area_mm2", "open area", "mm2"),
                new("share_of_inlet", "share of the inlet", ""),
                new("speed_m_s", "speed", "m/s"),
                new("reynolds", "Reynolds number", ""),
                new("loss_low_pa", "loss, at least", "Pa"),
                new("loss_pa", "loss, likely", "Pa"),
                new("loss_high_pa", "loss, at most", "Pa"),
            ],
            [
                .. path.Stages.Select((stage, i) => new FigureRow(
                    stage.Name,
                    [
                        stage.Area,
                        stage.Area / path.InletArea,
                        flow is { } at ? stage.Velocity(at.Likely) : null,
                        flow is { } there ? stage.Reynolds(there.Likely, path.Gas) : null,
                        losses.IsEmpty ? null : losses[i].Low,
                        losses.IsEmpty ? null : losses[i].Likely,
                        losses.IsEmpty ? null : losses[i].High,
                    ])),
            ]);
    }

    private static IEnumerable<string> Words(FlowPath path, FlowDesign design)
    {
        yield return design.Order.IsEmpty
            ? $"The gas is assumed to come in at '{path.Inlet}' and to leave at '{path.Vent}' by the path of least resistance; flow.order "
                + "gives another."
            : "The order of the stages is the design's own (flow.order).";
        if (path.Gas.Flow is null)
            yield return "Speeds and losses need a flow: give flow.blow_by, or engine.";
        yield return "Losses are estimates: stages so near to each other disturb one another, and small holes at low speed lie outside the "
            + "range of the published figures. A wet or clogged medium loses more. Measure the crankcase pressure when it runs.";
        yield return "A crankcase that is choked pushes oil past its seals: do not run an engine above its maker's limit of crankcase "
            + "pressure.";
        yield return path.Stages[0].Kind == StageKind.Hose
            ? "The hose is assumed straight: bends, clamps, kinks and a valve in it add to the loss."
            : "The hose from the crankcase is not in the loss: give flow.hose_length.";
        if (path.Stages.Any(stage => stage.Packing is { } packing && StageLoss.FibreShare(packing) is null))
            yield return "No loss is calculated for a packing without a known metal and fibre diameter.";
    }
}
