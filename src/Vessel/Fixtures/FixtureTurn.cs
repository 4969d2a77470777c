using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Sites;

namespace Vessel.Fixtures;

/// <summary>What stands when a port's turn to be tacked has come.</summary>
/// <param name="Tacks">How many it gets, evenly from the footprint's start.</param>
/// <param name="IsTopOn">Whether the top is on the shell by then.</param>
/// <param name="IsBottomOn">Whether the bottom is.</param>
/// <param name="Neighbours">Bodies on the outside of the ports that are there by then, with their names, in the port's own frame.</param>
internal sealed record FixtureTurn(int Tacks, bool IsTopOn, bool IsBottomOn, ImmutableArray<(string Name, Vector3 At)> Neighbours)
{
    /// <summary>Between places on a neighbour along its tube, mm, and round it.</summary>
    private const double Step = 3;

    private const int Round = 48;

    public static FixtureTurn Of(PortSite site, Plan plan)
    {
        var order = plan.Order;
        var own = order.Tasks.Single(task => IsOf(task, WeldRole.PortSeam, site.Port.Path));
        // What does not hang together with its host yet is out of the way.
        var there = order.PartsAt(own);
        var before = order.Tasks.TakeWhile(task => task != own).ToList();
        bool IsOn(VesselEnd end) =>
            before.Exists(task => task.Id == plan.Assembly.Chamber.Head(end).ClosingTask(plan.Assembly.Joints));
        return new(
            plan.TacksOf(site),
            IsOn(VesselEnd.Top),
            IsOn(VesselEnd.Bottom),
            [
                .. plan.Assembly.Sites
                    .Where(other => other != site && there.Contains(Slug.Of(other.Port.Name))
                        && before.Exists(task => IsOf(task, WeldRole.PortSeam, other.Port.Path)))
                    .SelectMany(other => Outside(other).Select(at => (other.Port.Name, site.Frame.ToLocal(at)))),
            ]);
    }

    private static bool IsOf(WorkTask task, WeldRole role, string owner) =>
        task.Weld is { } weld && weld.Role == role && weld.Owner == owner;

    /// <summary>Places on a port's tube from its host outward, and on its fitting.</summary>
    private static IEnumerable<Vector3> Outside(PortSite site)
    {
        foreach (var (leg, i) in site.Legs.Select((leg, i) => (leg, i)))
        {
            foreach (var at in On(leg.Frame, site.Port.OuterRadius, i == 0 ? site.Outside.Reach(0, 0) : 0, leg.Length))
                yield return at;
        }

        if (FittingEnvelope.Of(site.Port) is { } fitting)
        {
            foreach (var at in On(site.FreeEnd, fitting.Radius, 0, fitting.Length))
                yield return at;
        }
    }

    private static IEnumerable<Vector3> On(Frame3 frame, double radius, double low, double high)
    {
        var count = Math.Max(1, (int)Math.Ceiling((high - low) / Step));
        return from i in Enumerable.Range(0, count + 1)
               from k in Enumerable.Range(0, Round)
               select frame.ToOuter(Footprint.OnLine(radius, Turns.Full * k / Round, low + ((high - low) * i / count)));
    }
}
