using Vessel.Design;

namespace Vessel.Function;

/// <summary>The gas that flows through: SI units.</summary>
/// <param name="Flow">m3/s as it is in the vessel; null where nothing says how much.</param>
/// <param name="Density">kg/m3.</param>
/// <param name="Viscosity">Pa s.</param>
public sealed record MovingGas(Amount? Flow, double Density, double Viscosity)
{
    public const double LitresPerMinute = 60_000;

    public static MovingGas Of(FlowDesign design) => new(
        FlowOf(design) is { } flow ? 1 / LitresPerMinute * flow : null,
        Air.Density(design.Temperature, Air.Atmosphere + design.Pressure),
        Air.Viscosity(design.Temperature));

    /// <summary>L/min.</summary>
    private static Amount? FlowOf(FlowDesign design) =>
        design.BlowBy is { } given ? given : design.Engine is { } engine ? BlowBy.Of(engine) : null;
}
