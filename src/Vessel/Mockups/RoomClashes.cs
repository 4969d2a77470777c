using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>Something in the room of a hose or spanner.</summary>
/// <param name="Distance">Holds the true one, mm; zero at both ends where it reaches in.</param>
internal sealed record RoomClash(PortRoom Room, string OtherId, string Other, Interval Distance);

/// <summary>
/// What comes too near to the room of a hose or spanner: shell and heads, other ports and their rooms, brackets and straps, what a bracket
/// is bolted to.
/// </summary>
internal static class RoomClashes
{
    /// <summary>Everything else stays so far off, mm: common practice, no source.</summary>
    public const double Least = 1;

    private const double Hair = 1e-6;

    public static IEnumerable<RoomClash> Of(MockupPlan plan, IReadOnlyList<OutsideBody> standing)
    {
        var rooms = plan.Ports.SelectMany(port => PortRoom.Of(port, plan.Options)).ToList();
        var bodies = plan.Ports.Select(port => (port.Id, Attached.Of(port))).ToList();
        for (var i = 0; i < rooms.Count; i++)
        {
            var (room, bar) = (rooms[i], rooms[i].Bar);
            foreach (var (id, body) in bodies.Where(body => body.Id != room.Port.Id))
            {
                if (Near(bar, body.Bodies) is { } distance)
                    yield return new(room, id, body.What, distance);
            }

            // A hose on a straight tube leaves the vessel; one on an elbow may run along it.
            if (room.Port.Site.Port.Elbow is not null
                && TubeBodies.FromVessel(plan.Outside, room.Port.FrameAt(room.To), room.Radius, room.From - room.To, 0) is var away
                && away < Least)
            {
                yield return new(room, "shell", "the vessel", new(Math.Max(0, away), Math.Max(0, away)));
            }

            // Each pair of rooms once, told of the later.
            foreach (var other in rooms.Take(i).Where(other => other.Port.Id != room.Port.Id))
            {
                if (Near(bar, [other.Bar]) is { } distance)
                    yield return new(room, other.Port.Id, other.What, distance);
            }

            if (WithVessel(room, bar, plan) is { } near)
                yield return near;
            foreach (var body in standing)
            {
                if (Near(bar, [.. body.Bodies.Select(piece => piece.Body)]) is { } distance)
                    yield return new(
                        room, body.Id, body.Name, new(Math.Max(0, distance.Start - body.Bodies.Max(piece => piece.Slack)), distance.End));
                if (body.BoltedTo is not var (outward, level))
                    continue;
                var clear = level - bar.Furthest(outward).Dot(outward);
                if (clear < Least)
                    yield return new(room, body.Id, $"what {body.Name} is bolted to", new(Math.Max(0, clear), Math.Max(0, clear)));
            }
        }
    }

    private static RoomClash? WithVessel(PortRoom room, Bar bar, MockupPlan plan)
    {
        var (distance, at) = BodyRoom.Of(bar, room.Port.FrameAt(room.To), plan.Outside);
        if (distance >= Least)
            return null;
        var outside = plan.Outside;
        var height = outside.At(outside.NearestTo(at).Along).V;
        // What stands over the shell's ends belongs to the heads.
        var part = height < Hair ? "bottom" : height > plan.ShellHeight - Hair ? "top" : "shell";
        return new(room, part, $"the vessel's {part}", new(distance, distance));
    }

    /// <summary>The least distance where it is too small.</summary>
    private static Interval? Near(Bar bar, ImmutableArray<ConvexBody> others)
    {
        var around = Ball.Round([bar]);
        Interval? least = null;
        foreach (var other in others)
        {
            if (around.DistanceTo(Ball.Round([other])) > Least)
                continue;
            var distance = ConvexDistance.Between(bar, other);
            if (distance.Start < Least && distance.End < (least?.End ?? double.PositiveInfinity))
                least = distance;
        }

        return least;
    }
}
