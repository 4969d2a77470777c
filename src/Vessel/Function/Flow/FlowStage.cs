using Vessel.Design;

namespace Vessel.Function;

/// <summary>What a stage is, which decides how its loss is reckoned.</summary>
public enum StageKind
{
    /// <summary>The hose before the inlet.</summary>
    Hose,

    /// <summary>A fitting's or port's tube.</summary>
    Bore,

    /// <summary>A mitred elbow in a port's tube.</summary>
    Bend,

    /// <summary>Holes, windows or a rim in metal.</summary>
    Opening,

    /// <summary>A length of a room, along the vessel's axis.</summary>
    Passage,

    /// <summary>The ring between an edge and what stands in front of it, where the gas turns.</summary>
    Turn,

    /// <summary>A passage full of fibres.</summary>
    Packing,
}

/// <summary>One after the other these are the gas's way.</summary>
/// <param name="Name">Name in words: <c>ring round sleeve</c>.</param>
/// <param name="Area">Open, square to the flow, mm2.</param>
/// <param name="Perimeter">Wetted, mm.</param>
/// <param name="Length">Length that the gas runs along it, mm; of an opening, through the metal.</param>
/// <param name="Rise">How far it takes the gas up, mm; negative downward.</param>
/// <param name="Path">Path of what makes it, in the design.</param>
public sealed record FlowStage(
    string Name, StageKind Kind, double Area, double Perimeter, double Length, double Rise, string Path)
{
    /// <summary>What fills it; null unless it is a <see cref="StageKind.Packing"/>.</summary>
    public PackingDesign? Packing { get; init; }

    /// <summary>Loss of a <see cref="StageKind.Bend"/> in dynamic pressures, with its bounds; zero for others.</summary>
    public Amount BendLoss { get; init; } = 0;

    /// <summary>mm.</summary>
    public double HydraulicDiameter => 4 * Area / Perimeter;

    /// <summary>m/s.</summary>
    /// <param name="flow">m3/s.</param>
    public double Velocity(double flow) => flow / (Area * 1e-6);

    public double Reynolds(double flow, MovingGas gas) =>
        Velocity(flow) * HydraulicDiameter * 1e-3 * gas.Density / gas.Viscosity;
}
