using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>
/// The cavity of a vessel that stands in a position. Levels are measured along the plumb line from the vessel's origin; upright they are
/// heights in its frame.
/// </summary>
public sealed class Attitude
{
    private readonly Dictionary<Opening, Interval> _reach;

    public Attitude(Cavity cavity, Position position)
    {
        (Cavity, Position) = (cavity, position);
        _reach = cavity.Openings.Distinct().ToDictionary(way => way, way => way.Shape.Along(position.Up));
    }

    public Cavity Cavity { get; }

    public Position Position { get; }

    /// <summary>Levels of the lowest and the highest place inside, mm.</summary>
    public Interval Depth
    {
        get
        {
            var pieces = Cavity.Rooms.SelectMany(room => room.Pieces).Select(piece => piece.Along(Position)).ToList();
            return new(pieces.Min(piece => piece.Start), pieces.Max(piece => piece.End));
        }
    }

    /// <summary>Level of an opening's lowest point, mm: from there on liquid comes through.</summary>
    public double Lowest(Opening way) => _reach[way].Start;

    /// <summary>Level that liquid has to reach to leave through an opening, mm: the highest that it must pass.</summary>
    public double Sill(Opening way) =>
        way.Beyond.Select(edge => edge.Along(Position.Up).Start).Append(Lowest(way)).Max();

    /// <summary>Level of an opening's highest point, mm: from there on it is shut to gas.</summary>
    public double Highest(Opening way) => _reach[way].End;

    /// <summary>Volume that lies below a level, liquid as high in all rooms, mm3.</summary>
    public double VolumeBelow(double level) => Cavity.Rooms.Sum(room => VolumeBelow(room, level));

    /// <summary>Volume of one room below a level, mm3.</summary>
    public double VolumeBelow(Room room, double level) => room.VolumeBelow(level, Position);

    /// <summary>Where liquid at a level stands on the vessel's axis, mm.</summary>
    public double OnAxis(double level) => level / Math.Cos(Position.Angle);
}
