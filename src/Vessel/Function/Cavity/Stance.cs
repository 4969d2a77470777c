using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>A cavity as it stands, upright or leaning; levels are measured along the plumb line from the vessel's origin.</summary>
internal sealed class Stance
{
    private readonly Dictionary<Opening, Interval> _reach;

    public Stance(Cavity cavity, Lean lean)
    {
        (Cavity, Lean) = (cavity, lean);
        _reach = cavity.Openings.Distinct().ToDictionary(way => way, way => way.Shape.Along(lean.Up));
    }

    public Cavity Cavity { get; }

    public Lean Lean { get; }

    /// <summary>From there on oil comes through.</summary>
    public double Lowest(Opening way) => _reach[way].Start;

    /// <summary>From there on oil leaves through a port.</summary>
    public double Sill(Opening way) => way.SillAlong(Lean.Up);

    /// <summary>From there on it is shut to gas.</summary>
    public double Highest(Opening way) => _reach[way].End;

    public double VolumeBelow(double level) => Cavity.Rooms.Sum(room => room.VolumeBelow(level, Lean));

    /// <summary>Where oil at a level stands on the vessel's axis, mm.</summary>
    public double OnAxis(double level) => level / Math.Cos(Lean.Angle);
}
