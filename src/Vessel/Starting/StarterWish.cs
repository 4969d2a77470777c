using Vessel.Stock;

namespace Vessel.Starting;

/// <summary>What a user knows before there is a design. Lengths in mm.</summary>
/// <param name="Purpose">Becomes the vessel's name.</param>
/// <param name="BlowBy">Gas that flows through, L/min.</param>
/// <param name="BlowByFrom">Where that figure comes from, in words.</param>
/// <param name="Hose">Outside diameter of the stubs for the hoses; null to have it chosen.</param>
/// <param name="RoomDiameter">Greatest outside diameter of the body.</param>
/// <param name="RoomHeight">Greatest height over all, stubs and drain included.</param>
/// <param name="Material">Material of all parts.</param>
/// <param name="Capacity">Oil to be held between drains, L.</param>
/// <param name="CapacityFrom">Where that figure comes from, in words.</param>
/// <param name="HasBracket">Bolted up by a bracket; else held by a band.</param>
public sealed record StarterWish(
    string Purpose,
    double BlowBy,
    string BlowByFrom,
    double? Hose,
    double RoomDiameter,
    double RoomHeight,
    Material Material,
    double Capacity,
    string CapacityFrom,
    bool HasBracket);
