using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Which openings the gas takes from inlet to vent.</summary>
/// <param name="Inlet">A port.</param>
/// <param name="Ways">Between rooms, in order; openings side by side between the same two rooms are one way.</param>
/// <param name="Vent">A port.</param>
internal sealed record FlowRoute(Opening Inlet, ImmutableArray<ImmutableArray<Opening>> Ways, Opening Vent)
{
    /// <summary>
    /// The way of least resistance: loss goes with 1 / area squared, so that is what the shortest way is measured by. Null
    /// when there is none.
    /// </summary>
    public static FlowRoute? Find(Cavity cavity, Opening inlet, Opening vent)
    {
        var to = cavity.Rooms.ToDictionary(room => room.Name, _ => (Cost: double.PositiveInfinity, By: (Way?)null));
        to[inlet.From] = (0, null);
        var ways = WaysOf(cavity);
        var open = cavity.Rooms.Select(room => room.Name).ToList();
        while (open.Count > 0)
        {
            var here = open.MinBy(room => to[room].Cost)!;
            open.Remove(here);
            foreach (var way in ways.Where(way => way.Leaves(here)))
            {
                var (there, cost) = (way.Other(here), to[here].Cost + way.Resistance);
                if (cost < to[there].Cost)
                    to[there] = (cost, way);
            }
        }

        if (!double.IsFinite(to[vent.From].Cost))
            return null;
        var back = new List<ImmutableArray<Opening>>();
        for (var room = vent.From; to[room].By is { } way; room = way.Other(room))
            back.Add(way.Openings);
        back.Reverse();
        return new(inlet, [.. back], vent);
    }

    /// <summary>Route by the names that the design gives; null when one is not an opening, or an end is no port.</summary>
    public static FlowRoute? ByHand(Cavity cavity, ImmutableArray<string> names)
    {
        var found = names.Select(name => cavity.Openings.FirstOrDefault(way => way.Name == name)).ToList();
        if (found.Contains(null) || found[0]!.IsPort is false || found[^1]!.IsPort is false)
            return null;
        ImmutableArray<ImmutableArray<Opening>> ways = [.. found[1..^1].Select(way => ImmutableArray.Create(way!))];
        return new(found[0]!, [.. IntoTube(cavity, found[0]!, ways.FirstOrDefault()), .. ways,
            .. IntoTube(cavity, found[^1]!, ways.LastOrDefault())], found[^1]!);
    }

    /// <summary>The end and windows of a port's tube all together, unless the way names one of them.</summary>
    private static IEnumerable<ImmutableArray<Opening>> IntoTube(Cavity cavity, Opening port, ImmutableArray<Opening> beside)
    {
        bool Leads(Opening way) => !way.IsPort && (way.To == port.From || way.From == port.From);
        return port.IntoTube && (beside.IsDefaultOrEmpty || !Leads(beside[0]))
            ? WaysOf(cavity).Select(way => way.Openings).Where(way => Leads(way[0])).Take(1)
            : [];
    }

    /// <summary>Openings side by side, the widest first.</summary>
    private static List<Way> WaysOf(Cavity cavity) =>
    [
        .. cavity.Openings
            .Where(way => !way.IsPort && !way.Plugged && way.Area > 0 && way.From != way.To)
            .GroupBy(way => string.CompareOrdinal(way.From, way.To) < 0 ? (way.From, way.To) : (way.To, way.From))
            .Select(group => new Way([.. group.OrderByDescending(way => way.Area)], Math.Pow(group.Sum(way => way.Area), -2))),
    ];

    private sealed record Way(ImmutableArray<Opening> Openings, double Resistance)
    {
        public bool Leaves(string room) => Openings[0].From == room || Openings[0].To == room;

        public string Other(string room) => Openings[0].From == room ? Openings[0].To : Openings[0].From;
    }
}
