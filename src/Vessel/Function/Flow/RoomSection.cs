using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>A room cut level: what is open between its wall and what stands in it, mm and mm2.</summary>
internal static class RoomSection
{
    /// <summary>Radius of the room's own wall at a height, mm.</summary>
    public static double Radius(Room room, double height) => room.Pieces
        .Where(piece => piece.BoreRadius == 0 && piece.Heights.Contains(height))
        .Select(piece => piece.RadiusAt(height))
        .DefaultIfEmpty(0)
        .Max();

    /// <summary>Names and radii of what stands in the room at a height, tubes included, mm.</summary>
    public static IEnumerable<(string Name, double Radius)> Inside(Room room, double height) => room.Standing
        .Where(can => can.Heights.Contains(height))
        .Select(can => (can.Name, can.OuterRadius))
        .Concat(room.Tubes.Where(tube => tube.Upright.Contains(height)).Select(tube => (tube.Site.Port.Name, tube.Site.Port.OuterRadius)));

    public static double Area(Room room, double height) =>
        Circle(Radius(room, height)) - Inside(room, height).Sum(thing => Circle(thing.Radius));

    public static double Perimeter(Room room, double height) =>
        Turns.Full * (Radius(room, height) + Inside(room, height).Sum(thing => thing.Radius));

    /// <summary>Heights at which the section changes, within a range, both ends of the range included, ascending.</summary>
    public static ImmutableArray<double> Breaks(Room room, Interval heights) =>
    [
        .. room.Standing.SelectMany(can => new[] { can.Heights.Start, can.Heights.End })
            .Concat(room.Tubes.SelectMany(tube => new[] { tube.Upright.Start, tube.Upright.End }))
            .Where(height => height > heights.Start && height < heights.End)
            .Append(heights.Start)
            .Append(heights.End)
            .Distinct()
            .Order(),
    ];

    /// <summary>How far it is clear from a circle round the axis up or down, mm.</summary>
    public static double Clear(Room room, double radius, double height, bool down)
    {
        var things = room.Standing
            .Where(can => can.OuterRadius > radius)
            .Select(can => down ? height - can.Heights.End : can.Heights.Start - height);
        return things.Append(ToWall(room, radius, height, down)).Where(clear => clear >= -1e-9).DefaultIfEmpty(0).Min();
    }

    private static double ToWall(Room room, double radius, double height, bool down)
    {
        var end = down ? room.Heights.Start : room.Heights.End;
        // A dish or cone comes nearer at a radius than at its pole.
        var dome = room.Pieces.OfType<ProfileRoomPiece>()
            .Select(piece => new Profile(piece.Piece).FirstHit(new(radius, 0, height), down ? Vector3.UnitZ : -Vector3.UnitZ)?.At.Z is { } z
                && piece.Heights.Contains(z) ? z : (double?)null)
            .FirstOrDefault(z => z is not null);
        return down ? height - (dome ?? end) : (dome ?? end) - height;
    }

    private static double Circle(double radius) => Math.PI * radius * radius;
}
