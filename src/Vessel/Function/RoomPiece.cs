using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>A slice of a room between two heights. A closed set.</summary>
public abstract record RoomPiece(Interval Heights)
{
    /// <summary>mm3 below a level, at most the whole piece.</summary>
    public abstract double VolumeBelow(double level);
}

/// <summary>A piece of one cross section all the way up.</summary>
/// <param name="Area">mm2.</param>
public sealed record PrismPiece(Interval Heights, double Area) : RoomPiece(Heights)
{
    public static PrismPiece Cylinder(Interval heights, double radius) => new(heights, Math.PI * radius * radius);

    public override double VolumeBelow(double level) =>
        Area * (Math.Clamp(level, Heights.Start, Heights.End) - Heights.Start);
}

/// <summary>Half a ball, upper or lower, round a centre at a height.</summary>
public sealed record SpherePiece(Interval Heights, double Radius, double Centre) : RoomPiece(Heights)
{
    public override double VolumeBelow(double level)
    {
        // From the ball's south pole up to z: pi h^2 (3 R - h) / 3.
        double Below(double z) => z - Centre + Radius is var h ? Math.PI * h * h * ((3 * Radius) - h) / 3 : 0;
        return Below(Math.Clamp(level, Heights.Start, Heights.End)) - Below(Heights.Start);
    }
}
