using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>How much the vessel holds, upright; mm3 and mm.</summary>
/// <param name="Brim">The inside less internals.</param>
/// <param name="Fillable">Less the air that no open port lets out.</param>
/// <param name="Usable">Up to the first event.</param>
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
        var brim = cavity.VolumeBelow(cavity.Ceiling);
        var open = cavity.Openings.Where(opening => !opening.Closed).ToList();
        var events = open
            .SelectMany(opening => new LevelEvent[]
            {
                new($"oil reaches the mouth of {opening.Port} and can run out through it", opening.Lowest, cavity.VolumeBelow(opening.Lowest)),
                new($"oil seals {opening.Port}", opening.Highest, cavity.VolumeBelow(opening.Highest)),
            })
            .OrderBy(e => e.Height)
            .ThenBy(e => e.What, StringComparer.Ordinal)
            .ToImmutableArray();
        // The last port to be sealed is the last way out for air; a vessel without one cannot be filled at all.
        var fillable = open.Count == 0 ? 0 : open.Max(opening => cavity.VolumeBelow(opening.Highest));
        return new(
            brim,
            fillable,
            events.IsEmpty ? 0 : events[0].Volume,
            events.IsEmpty ? "no open port" : events[0].What,
            events,
            Table(cavity));
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
