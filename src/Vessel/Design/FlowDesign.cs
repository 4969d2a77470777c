using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>What flows through.</summary>
/// <param name="BlowBy">Gas flow, L/min; null when not given.</param>
/// <param name="OilDensity">kg/m3.</param>
/// <param name="Temperature">Of gas and oil, degrees Celsius.</param>
public sealed record FlowDesign(string Path, double? BlowBy, double OilDensity, double Temperature)
{
    /// <summary>Kinematic, mm2/s; null when not given.</summary>
    public double? OilViscosity { get; init; }

    /// <summary>Of the air round the vessel, degrees Celsius.</summary>
    public double Surroundings { get; init; } = 20;

    /// <summary>Of the gas above the air round the vessel, Pa.</summary>
    public double Pressure { get; init; }

    /// <summary>From inlet to vent, Pa: a finding beyond it.</summary>
    public double MostLoss { get; init; } = 1000;

    /// <summary>Inlet, openings and vent by name; empty where the order is found.</summary>
    public ImmutableArray<string> Order { get; init; } = [];

    /// <summary>Null when not given.</summary>
    public EngineDesign? Engine { get; init; }
}

/// <summary>How well an engine's rings seal.</summary>
public enum EngineCondition
{
    Sound,
    Worn,
}

/// <summary>What blow-by is estimated from.</summary>
/// <param name="Displacement">L.</param>
/// <param name="Speed">Revolutions a minute.</param>
/// <param name="Boost">Above the air round it, Pa.</param>
public sealed record EngineDesign(string Path, double Displacement, double Speed, double Boost, EngineCondition Condition);
