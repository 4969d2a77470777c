using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>
/// The inside of the vessel as a graph: rooms, and the openings between them and to the outside. Capacity, gas path,
/// trapped air and trapped oil are all read from it.
/// </summary>
public sealed record Cavity(ImmutableArray<Room> Rooms, ImmutableArray<Opening> Openings)
{
    /// <summary>Openings to the outside that are open in use.</summary>
    public IEnumerable<Opening> OpenPorts => Openings.Where(opening => opening.IsPort && !opening.Plugged);
}

/// <summary>A space that is parted from the others by metal: the vessel's own, a sleeve's bore, a cap's cup.</summary>
/// <param name="Heights">Lowest and highest place, mm in the vessel's frame.</param>
/// <param name="Pieces">What it is made of, one above the other.</param>
/// <param name="Taken">Coaxial pieces that other rooms and their walls take out of it.</param>
/// <param name="Tubes">Ports' tubes that stand in it.</param>
public sealed record Room(
    string Name,
    Interval Heights,
    ImmutableArray<RoomPiece> Pieces,
    ImmutableArray<RoomPiece> Taken,
    ImmutableArray<StandingTube> Tubes)
{
    /// <summary>Name of the sleeve or cap whose space it is part of; null for the vessel's own.</summary>
    public string? Within { get; init; }

    /// <summary>Sleeves and caps that stand in it, walls included, over its own heights.</summary>
    public ImmutableArray<StandingEnclosure> Standing { get; init; } = [];

    /// <summary>
    /// mm3 below oil that stands at a level, measured along the plumb line through the vessel's origin. None below nothing: what the
    /// subtraction of like volumes leaves of rounding at the floor is cut off.
    /// </summary>
    public double VolumeBelow(double level, Position position) => Math.Max(
        0,
        Pieces.Sum(piece => piece.VolumeBelow(level, position))
        - Taken.Sum(piece => piece.VolumeBelow(level, position))
        - Tubes.Sum(tube => tube.VolumeBelow(level, position.Up)));
}

/// <summary>A sleeve or cap as the room round it sees it.</summary>
public sealed record StandingEnclosure(string Name, Interval Heights, double OuterRadius);

/// <summary>A way from one room to another, or to the outside.</summary>
/// <param name="Name">Name in words: <c>rim of sleeve</c>; a port's name for a port.</param>
/// <param name="From">Name of a room.</param>
/// <param name="To">Name of a room, or <see cref="Outside"/>.</param>
/// <param name="Plugged">No air passes it in use: its plug or cap is in, or its pipe stands full.</param>
/// <param name="Area">Open to gas, square to the flow, mm2.</param>
/// <param name="Shape">Where its edge lies.</param>
public sealed record Opening(
    string Name, string From, string To, bool Plugged, double Area, OpeningShape Shape)
{
    public const string Outside = "outside";

    /// <summary>How far its edge reaches along the vessel's axis, mm in the vessel's frame.</summary>
    public Interval Axial { get; } = Shape.Along(Vector3.UnitZ);

    /// <summary>
    /// Sections of a port's bore that liquid has to pass behind the mouth, at each mitre of its elbow and at its free end.
    /// Between two of them the bore is straight, so that no other section stands higher.
    /// </summary>
    public ImmutableArray<OpeningShape> Beyond { get; init; } = [];

    public bool IsPort => To == Outside;

    /// <summary>What a port is there for; null where that is not said, or for what is no port.</summary>
    public PortPurpose? Purpose { get; init; }

    /// <summary>The free end of a sleeve or cap, round which the gas turns.</summary>
    public bool IsRim { get; init; }

    /// <summary>Whether the opening is that of a port into a tube with windows, which is a room of its own.</summary>
    public bool IntoTube { get; init; }

    /// <summary>The open inner end of such a tube: name of its port.</summary>
    public string? EndOf { get; init; }

    /// <summary>
    /// An open port that is not the gas's and is an overflow, or whose pipe rises above its mouth: liquid stands in it and shuts off
    /// nothing.
    /// </summary>
    public bool IsStandpipe { get; init; }

    /// <summary>Length of the edges that the gas passes, mm.</summary>
    public double Perimeter { get; init; }

    /// <summary>Through the metal, or along a port's tube, mm.</summary>
    public double Depth { get; init; }

    /// <summary>What makes it, in the design.</summary>
    public string Path { get; init; } = "inside";
}
