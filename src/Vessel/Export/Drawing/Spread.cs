using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Drawing;

/// <summary>Figures, names and symbols that would stand on each other, moved apart in their order.</summary>
internal static class Spread
{
    /// <summary>
    /// The places nearest to those that are wanted, by least squares, at which none touches the next and all stay in the room. Less the
    /// room that stands before each, places only have to ascend: neighbours that do not are pooled at their mean (Ayer and others, Ann.
    /// Math. Statist. 26 (1955)).
    /// </summary>
    /// <param name="wanted">Middle and size of each, in the order that they keep, mm.</param>
    /// <param name="room">Where it is too small, what is last stands out of its end.</param>
    public static ImmutableArray<double> Of(IReadOnlyList<(double Place, double Size)> wanted, Interval room)
    {
        var before = new double[wanted.Count];
        var pools = new List<(double Sum, int Count)>();
        for (var i = 0; i < wanted.Count; i++)
        {
            before[i] = i == 0 ? 0 : before[i - 1] + ((wanted[i - 1].Size + wanted[i].Size) / 2);
            var pool = (Sum: wanted[i].Place - before[i], Count: 1);
            for (; pools.Count > 0 && pools[^1].Sum / pools[^1].Count > pool.Sum / pool.Count; pools.RemoveAt(pools.Count - 1))
                pool = (pool.Sum + pools[^1].Sum, pool.Count + pools[^1].Count);
            pools.Add(pool);
        }

        if (pools.Count == 0)
            return [];
        var (low, high) = (room.Start + (wanted[0].Size / 2), room.End - before[^1] - (wanted[^1].Size / 2));
        var means = pools.SelectMany(pool => Enumerable.Repeat(Math.Max(low, Math.Min(high, pool.Sum / pool.Count)), pool.Count));
        return [.. means.Zip(before, (mean, from) => mean + from)];
    }
}
