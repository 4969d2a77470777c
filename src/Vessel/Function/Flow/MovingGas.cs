using Vessel.Design;

namespace Vessel.Function;

/// <summary>The gas that flows through: SI units.</summary>
/// <param name="Flow">m3/s as it is in the vessel; null where nothing says how much.</param>
/// <param name="Density">kg/m3.</param>
/// <param name="Viscosity">Pa s.</param>
public sealed record MovingGas(Amount? Flow, double Density, double Viscosity)
{
    public const double LitresPerMinute = 60_000;

    /// <summary>Mean way of a molecule from one to the next, m; tiny where none is told, so that nothing slips.</summary>
    public double FreePath { get; init; } = 1e-30;

    public static MovingGas Of(FlowDesign design)
    {
        var (density, viscosity) = (Air.Density(design.Temperature, Air.Atmosphere + design.Pressure), Air.Viscosity(design.Temperature));
        return new(FlowOf(design) is { } flow ? 1 / LitresPerMinute * flow : null, density, viscosity)
        {
            FreePath = Air.FreePath(design.Temperature, density, viscosity),
        };
    }

    /// <summary>L/min as it is in the vessel.</summary>
    private static Amount? FlowOf(FlowDesign design) =>
        design.BlowBy is { } given ? given
        : design.Engine is { } engine ? BlowBy.Swelling(design.Surroundings, design.Temperature, design.Pressure) * BlowBy.Of(engine)
        : null;
}
