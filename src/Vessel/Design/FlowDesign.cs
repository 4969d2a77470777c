using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What flows through.</summary>
/// <param name="BlowBy">Gas flow, L/min; null when not given.</param>
/// <param name="OilDensity">Density of the liquid, kg/m3: as given, or by its name and the temperature.</param>
/// <param name="Temperature">Temperature of gas and liquid, degrees Celsius.</param>
public sealed record FlowDesign(string Path, double? BlowBy, double OilDensity, double Temperature)
{
    /// <summary>What the vessel catches or holds.</summary>
    public Liquid Liquid { get; init; } = Liquids.Usual;

    /// <summary>The file says what the liquid is.</summary>
    public bool IsLiquidGiven { get; init; }

    /// <summary>The file gives the density itself.</summary>
    public bool IsDensityGiven { get; init; }

    /// <summary>Kinematic, mm2/s; null when not given.</summary>
    public double? OilViscosity { get; init; }

    /// <summary>Hose that brings the gas to the inlet; null when not given.</summary>
    public HoseDesign? Hose { get; init; }

    /// <summary>Temperature of the air round the vessel, degrees Celsius.</summary>
    public double Surroundings { get; init; } = 20;

    /// <summary>Pressure of the gas above the air round the vessel, Pa.</summary>
    public double Pressure { get; init; }

    /// <summary>Loss from the hose's start, or the inlet, to the vent, Pa: a finding beyond it.</summary>
    public double MostLoss { get; init; } = 1000;

    /// <summary>Inlet, openings and vent by name; empty where the order is found.</summary>
    public ImmutableArray<string> Order { get; init; } = [];

    /// <summary>Null when not given.</summary>
    public EngineDesign? Engine { get; init; }
}

/// <summary>The hose before the inlet.</summary>
/// <param name="Length">mm.</param>
/// <param name="Bore">mm; null where it is the inlet's own.</param>
public sealed record HoseDesign(double Length, double? Bore);

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
