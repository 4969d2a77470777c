using Vessel.Design;

namespace Vessel.Function;

/// <summary>The liquid's figures as inputs of others.</summary>
internal static class LiquidInput
{
    public static FigureInput Density(FlowDesign flow) => new(
        "rho_p", $"density of the {flow.Liquid.Word}", flow.OilDensity, "kg/m3",
        flow.IsDensityGiven ? "flow.oil_density" : "liquid-density");

    /// <summary>Null where the design gives it.</summary>
    public static Figure? DensityFigure(FlowDesign flow) => flow.IsDensityGiven ? null : new(
        "liquid-density", "rho_p", $"density of {flow.Liquid.Name}", flow.OilDensity, "kg/m3",
        "between two points of a table, by the temperature",
        [new("T", "temperature", flow.Temperature, "degC", "flow.temperature")],
        flow.Liquid.Source,
        Holds(flow));

    /// <summary>Where the liquid's figures hold.</summary>
    public static Validity Holds(FlowDesign flow) => new(
        $"{FigureText.Of(flow.Liquid.Range.Low)} to {FigureText.Of(flow.Liquid.Range.High)} degC; clean and fresh: brands differ, a data "
            + "sheet goes before this",
        flow.Temperature >= flow.Liquid.Range.Low && flow.Temperature <= flow.Liquid.Range.High);
}
