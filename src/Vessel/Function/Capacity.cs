using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>How much the vessel holds, upright; mm3 and mm.</summary>
/// <param name="Brim">The inside less internals.</param>
/// <param name="Fillable">Less the air that stays shut in as the oil rises.</param>
/// <param name="Usable">Up to the first spill or seal of the gas path.</param>
/// <param name="LimitedBy">What happens there, in words.</param>
/// <param name="Events">From the bottom up.</param>
/// <param name="Levels">Height in the vessel's frame against volume.</param>
public sealed record Capacity(
    double Brim,
    double Fillable,
    double Usable,
    string LimitedBy,
    ImmutableArray<LevelEvent> Events,
    ImmutableArray<(double Height, double Volume)> Levels)
{
    private const double LevelStep = 10;

    public static Capacity Of(Cavity cavity)
    {
        var events = Spills(cavity)
            .Concat(BrokenPaths(cavity))
            .OrderBy(e => e.Height)
            .ThenBy(e => e.What, StringComparer.Ordinal)
            .ToImmutableArray();
        return new(
            cavity.VolumeBelow(cavity.Ceiling),
            cavity.Rooms.Sum(room => room.VolumeBelow(LastBreath(cavity, room))),
            events.IsEmpty ? 0 : events[0].Volume,
            events.IsEmpty ? "no open port" : events[0].What,
            events,
            Table(cavity));
    }

    private static IEnumerable<LevelEvent> Spills(Cavity cavity) => cavity.OpenPorts.Select(port => new LevelEvent(
        $"oil reaches the mouth of {port.Name} and can run out through it", port.Lowest, cavity.VolumeBelow(port.Lowest)));

    /// <summary>Each level at which some two open ports lose the way between them, with what was sealed there.</summary>
    private static IEnumerable<LevelEvent> BrokenPaths(Cavity cavity)
    {
        var pairs = GasPath.At(cavity, double.NegativeInfinity).ConnectedPairs;
        foreach (var level in GasPath.Seals(cavity))
        {
            var left = GasPath.At(cavity, level).ConnectedPairs;
            if (left < pairs)
            {
                var sealedHere = cavity.Openings.Where(way => !way.Plugged && way.Highest == level).Select(way => way.Name);
                yield return new($"oil seals the gas path at {string.Join(" and ", sealedHere)}", level, cavity.VolumeBelow(level));
            }

            pairs = left;
        }
    }

    /// <summary>The level from which on air in a room cannot leave; minus infinity when it never can.</summary>
    private static double LastBreath(Cavity cavity, Room room)
    {
        if (!GasPath.At(cavity, double.NegativeInfinity).Breathes(room))
            return double.NegativeInfinity;
        return GasPath.Seals(cavity).First(level => !GasPath.At(cavity, level).Breathes(room));
    }

    private static ImmutableArray<(double Height, double Volume)> Table(Cavity cavity)
    {
        var (floor, ceiling) = (cavity.Floor, cavity.Ceiling);
        var steps = (int)Math.Floor((ceiling - floor) / LevelStep);
        return
        [
            .. Enumerable.Range(0, steps + 1)
                .Select(i => floor + (i * LevelStep))
                .Append(ceiling)
                .Distinct()
                .Select(height => (height, cavity.VolumeBelow(height))),
        ];
    }
}

/// <summary>Something that happens when oil reaches a height.</summary>
public sealed record LevelEvent(string What, double Height, double Volume);
