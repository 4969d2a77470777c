using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>What happens as oil rises in a vessel that stands in one way.</summary>
/// <param name="Because">What makes it lean, where that is not the ground: <c>0.5 g sideways</c>; else empty.</param>
/// <param name="Events">From the bottom up.</param>
public sealed record Filling(Lean Lean, string Because, ImmutableArray<LevelEvent> Events)
{
    /// <summary>mm3 up to the first spill or seal of the gas path; zero without an open port.</summary>
    public double Usable => Events.IsEmpty ? 0 : Events[0].Volume;

    /// <summary>What happens there, in words.</summary>
    public string LimitedBy => Events.IsEmpty ? "no open port" : Events[0].What;

    internal static Filling Of(Stance stance, string because) => new(
        stance.Lean,
        because,
        [
            .. Spills(stance)
                .Concat(BrokenPaths(stance))
                .OrderBy(e => e.Level)
                .ThenBy(e => e.What, StringComparer.Ordinal)
                .Select(e => new LevelEvent(e.What, stance.OnAxis(e.Level), stance.VolumeBelow(e.Level))),
        ]);

    private static IEnumerable<(string What, double Level)> Spills(Stance stance) => stance.Cavity.OpenPorts.Select(port =>
        ($"oil reaches the mouth of {port.Name} and can run out through it", stance.Lowest(port)));

    /// <summary>Each level at which some two open ports lose the way between them, with what was sealed there.</summary>
    private static IEnumerable<(string What, double Level)> BrokenPaths(Stance stance)
    {
        var pairs = GasPath.At(stance, double.NegativeInfinity).ConnectedPairs;
        foreach (var level in GasPath.Seals(stance))
        {
            var left = GasPath.At(stance, level).ConnectedPairs;
            if (left < pairs)
            {
                // A port with windows in its tube is sealed where the last of them is, or its end.
                var sealedHere = stance.Cavity.Openings.Where(way => way is { Plugged: false, IntoTube: false } && stance.Highest(way) == level)
                    .Select(way => way.Name);
                yield return ($"oil seals the gas path at {string.Join(" and ", sealedHere)}", level);
            }

            pairs = left;
        }
    }
}

/// <summary>Something that happens when oil reaches a level.</summary>
/// <param name="Height">Of the level on the vessel's axis, mm in the vessel's frame.</param>
/// <param name="Volume">Held then, mm3.</param>
public sealed record LevelEvent(string What, double Height, double Volume);
