using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A round pin that stands out of a cap, or a socket in it.</summary>
/// <param name="Centre">Place in the cutting plane's X and Y.</param>
/// <param name="Depth">Out of the cap, mm; negative for a socket.</param>
/// <param name="Tip">Radius at the far end, mm.</param>
public readonly record struct Peg(Point2 Centre, double Radius, double Tip, double Depth);

/// <summary>Where pegs find room on a cut face.</summary>
public static class PegPlaces
{
    private const int Most = 4;

    /// <summary>Metal, or plastic, that is left round a peg, mm.</summary>
    private const double Round = 0.8;

    private static readonly ImmutableArray<double> _inward = [1.6, 2, 2.5, 3, 4, 5, 6, 8];

    /// <summary>Centres and the radius that all of them have, as far apart as can be; none where the face is too narrow.</summary>
    /// <param name="mesh">Mesh that is cut: its outside, and whatever earlier cuts left in it, keep clear of pegs and sockets.</param>
    /// <param name="face">Outlines of the cut, with what is filled on their left.</param>
    /// <param name="reach">Depth to which pegs and sockets come on both sides of the plane, mm.</param>
    public static (ImmutableArray<Point2> Centres, double Radius) Of(
        Mesh mesh, Frame3 plane, ImmutableArray<ImmutableArray<Point2>> face, double reach, double least, double greatest)
    {
        var sides = face.SelectMany(outline => outline.Select((p, i) => (A: p, B: outline[(i + 1) % outline.Length]))).ToList();
        var shadows = PegShadow.Of(mesh, plane, reach);
        // Every so many sides is enough: there are hundreds, and four pegs.
        var step = Math.Max(1, sides.Count / 120);
        var rooms = new List<(Point2 At, double Room)>();
        for (var i = 0; i < sides.Count; i += step)
        {
            var (a, b) = sides[i];
            if ((b - a).Length < 1e-9)
                continue;
            foreach (var inward in _inward)
            {
                var at = (0.5 * (a + b)) + (inward * (b - a).Unit().Turned);
                if (IsInside(at, sides) && shadows.Aggregate(greatest + Round, (room, shadow) => shadow.Clear(at, room)) is var room
                    && room >= least + Round)
                    rooms.Add((at, room));
            }
        }

        if (rooms.Count == 0)
            return ([], 0);
        var radius = Math.Min(greatest, rooms.Max(room => room.Room) - Round);
        var wide = rooms.Where(room => room.Room >= (0.8 * radius) + Round).ToList();
        radius = Math.Min(radius, wide.Min(room => room.Room) - Round);
        var chosen = new List<Point2> { wide.MaxBy(room => room.Room).At };
        while (chosen.Count < Most)
        {
            var next = wide.MaxBy(room => chosen.Min(c => (c - room.At).Length)).At;
            if (chosen.Min(c => (c - next).Length) < 4 * (radius + Round))
                break;
            chosen.Add(next);
        }

        return ([.. chosen], radius);
    }

    private static bool IsInside(Point2 at, List<(Point2 A, Point2 B)> sides)
    {
        var inside = false;
        foreach (var (a, b) in sides)
        {
            if (a.V > at.V != b.V > at.V && at.U < a.U + ((b.U - a.U) * (at.V - a.V) / (b.V - a.V)))
                inside = !inside;
        }

        return inside;
    }
}
