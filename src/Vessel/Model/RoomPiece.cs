using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>
/// A slice of a room between two heights: a solid of revolution round the vessel's axis, or an even share of one. A new
/// shape gives its radius at a height and its volume upright; leaning follows.
/// </summary>
public abstract record RoomPiece(Interval Heights)
{
    /// <summary>Radius of a bore that is not part of it, mm, the same all the way up.</summary>
    public virtual double BoreRadius => 0;

    /// <summary>Share of the section between bore and outside that is room and not metal.</summary>
    public virtual double Share => 1;

    /// <summary>Radius of the piece's outside at a height within <see cref="Heights"/>, mm; continuous.</summary>
    public abstract double RadiusAt(double height);

    /// <summary>mm3 below a level, upright; at most the whole piece.</summary>
    public abstract double VolumeBelow(double level);

    /// <summary>
    /// Least and greatest level of its places in a vessel that stands so, mm along the plumb line from the vessel's origin.
    /// </summary>
    public Interval Along(Position position)
    {
        if (position.IsUpright)
            return Heights;
        var (sin, cos) = Math.SinCos(position.Angle);
        return new(-Farthest(z => (RadiusAt(z) * sin) - (z * cos)), Farthest(z => (RadiusAt(z) * sin) + (z * cos)));
    }

    /// <summary>The greatest value over the piece's heights; its radius, and so the value, has one greatest place only.</summary>
    private double Farthest(Func<double, double> value)
    {
        const int thirds = 80;
        var (low, high) = (Heights.Start, Heights.End);
        for (var i = 0; i < thirds; i++)
        {
            var (a, b) = (low + ((high - low) / 3), high - ((high - low) / 3));
            (low, high) = value(a) < value(b) ? (a, high) : (low, b);
        }

        return Math.Max(value((low + high) / 2), Math.Max(value(Heights.Start), value(Heights.End)));
    }

    /// <summary>mm3 below oil that stands at a level, measured along the plumb line through the vessel's origin.</summary>
    public double VolumeBelow(double level, Position position)
    {
        if (position.IsUpright)
            return VolumeBelow(level);
        var whole = LeaningVolume.Of(Heights, RadiusAt, position.Angle, level);
        var bore = BoreRadius > 0 ? LeaningVolume.Of(Heights, _ => BoreRadius, position.Angle, level) : 0;
        return Share * (whole - bore);
    }
}

/// <summary>A ring of one cross section all the way up, of which an even share is room.</summary>
/// <param name="Area">Area of the section of the room, mm2.</param>
/// <param name="Inner">Radius of the ring's bore, mm; zero for none.</param>
/// <param name="Outer">mm.</param>
public sealed record PrismPiece(Interval Heights, double Area, double Inner, double Outer) : RoomPiece(Heights)
{
    public override double BoreRadius => Inner;

    public override double Share => Area / (Math.PI * ((Outer * Outer) - (Inner * Inner)));

    public static PrismPiece Cylinder(Interval heights, double radius) => new(heights, Math.PI * radius * radius, 0, radius);

    public override double RadiusAt(double height) => Outer;

    public override double VolumeBelow(double level) =>
        Area * (Math.Clamp(level, Heights.Start, Heights.End) - Heights.Start);
}

/// <summary>What a piece of the inside's profile encloses, between two heights.</summary>
public sealed record ProfileRoomPiece(Interval Heights, ProfilePiece Piece) : RoomPiece(Heights)
{
    private readonly double _below = Piece.VolumeBelow(Heights.Start);

    public override double RadiusAt(double height) => Piece.RadiusAt(height);

    public override double VolumeBelow(double level) => Piece.VolumeBelow(Math.Clamp(level, Heights.Start, Heights.End)) - _below;
}
