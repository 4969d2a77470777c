using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Function;

/// <summary>What happens as oil rises in a vessel that stands in one way.</summary>
/// <param name="Because">What makes it lean, where that is not the ground: <c>0.5 g sideways</c>; else empty.</param>
/// <param name="Events">Events from the bottom up.</param>
public sealed record Filling(Position Position, string Because, ImmutableArray<LevelEvent> Events)
{
    /// <summary>Heights that differ by less than this are one, mm: an edge told by points is that exact.</summary>
    private const double SameHeight = 1e-6;

    /// <summary>mm3 up to the first spill or seal of the gas path; zero without an open port.</summary>
    public double Usable => Events.IsEmpty ? 0 : Events[0].Volume;

    /// <summary>What happens there, in words.</summary>
    public string LimitedBy => Events.IsEmpty ? "no open port" : Events[0].What;

    /// <param name="liquid">Name of the liquid in a word: <c>oil</c>.</param>
    internal static Filling Of(Attitude attitude, string because, string liquid) => new(
        attitude.Position,
        because,
        [
            .. Spills(attitude, liquid)
                .Concat(BrokenPaths(attitude, liquid))
                .OrderBy(e => e.Level)
                .ThenBy(e => e.What, StringComparer.Ordinal)
                .Select(e => new LevelEvent(e.What, e.Level, attitude.OnAxis(e.Level), attitude.VolumeBelow(e.Level))),
        ]);

    /// <summary>Once every mouth lies under, nothing more runs in: no port spills above that.</summary>
    private static IEnumerable<(string What, double Level)> Spills(Attitude attitude, string liquid)
    {
        var last = attitude.Cavity.OpenPorts.Select(attitude.Highest).DefaultIfEmpty(0).Max();
        return
            from port in attitude.Cavity.OpenPorts
            let sill = attitude.Sill(port)
            where sill <= last
            select (
                port.Purpose == PortPurpose.Overflow ? $"{liquid} runs out through the overflow '{port.Name}'"
                    : sill > attitude.Lowest(port) + SameHeight
                    ? $"{liquid} runs out through '{port.Name}', over the highest place of its pipe"
                    : $"{liquid} reaches the mouth of '{port.Name}' and can run out through it",
                sill);
    }

    /// <summary>
    /// Each level at which some two open ports lose the way between them, with what was sealed there; else the last way out.
    /// </summary>
    private static IEnumerable<(string What, double Level)> BrokenPaths(Attitude attitude, string liquid)
    {
        // Where no two are joined, as with one port alone, each still lets its own air out.
        var joined = GasPath.At(attitude, double.NegativeInfinity).ConnectedPairs > 0;
        int Ways(double level) => GasPath.At(attitude, level) is var path && joined ? path.ConnectedPairs
            : path.OpenPorts.Count(port => !port.IsStandpipe);
        var pairs = Ways(double.NegativeInfinity);
        foreach (var level in GasPath.Seals(attitude))
        {
            var left = Ways(level);
            if (left < pairs)
            {
                // A port with windows in its tube is sealed where the last of them is, or its end.
                var sealedHere = attitude.Cavity.Openings
                    .Where(way => way is { Plugged: false, IntoTube: false } && attitude.Highest(way) == level)
                    .Select(way => $"'{way.Name}'");
                var names = string.Join(" and ", sealedHere);
                yield return (
                    joined ? $"{liquid} seals the gas path at {names}"
                        : left > 0 ? $"{liquid} shuts {names} to the air"
                        : $"{liquid} shuts {names}, the last way for the air",
                    level);
            }

            pairs = left;
        }
    }
}

/// <summary>Something that happens when oil reaches a level.</summary>
/// <param name="Level">Along the plumb line, mm.</param>
/// <param name="Height">Where the level crosses the vessel's axis, mm in the vessel's frame; leaning far, that may be outside the
/// vessel.</param>
/// <param name="Volume">Held then, mm3.</param>
public sealed record LevelEvent(string What, double Level, double Height, double Volume);
