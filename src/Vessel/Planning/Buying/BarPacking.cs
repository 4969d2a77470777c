using System.Collections.Immutable;

namespace Vessel.Planning;

/// <summary>Pieces laid out in stock lengths.</summary>
/// <param name="Bars">Indices of the pieces in each bar, in the order in which they are sawn.</param>
/// <param name="Bound">No fewer bars can do.</param>
/// <param name="TooLong">Indices of pieces that no bar holds.</param>
public sealed record BarPacking(ImmutableArray<ImmutableArray<int>> Bars, int Bound, ImmutableArray<int> TooLong)
{
    /// <summary>A search for fewer bars ends here.</summary>
    private const int MostTries = 20_000;

    public bool IsProven => Bars.Length == Bound;

    /// <summary>
    /// The fewest bars that a bounded search finds: longest piece first into the first bar that takes it, then every other way
    /// while the bound is not met. The bound is the greater of total over usable length and the number of pieces over half of it.
    /// </summary>
    /// <param name="lengths">mm.</param>
    /// <param name="usable">Usable length of a bar, mm.</param>
    /// <param name="kerf">Lost between pieces, mm.</param>
    public static BarPacking Of(ImmutableArray<double> lengths, double usable, double kerf)
    {
        var fits = Enumerable.Range(0, lengths.Length).Where(i => lengths[i] <= usable + 1e-9)
            .OrderByDescending(i => lengths[i]).ThenBy(i => i).ToArray();
        var room = usable + kerf;
        var sizes = fits.Select(i => lengths[i] + kerf).ToArray();
        var bound = Math.Max((int)Math.Ceiling((sizes.Sum() / room) - 1e-9), sizes.Count(size => size > (room / 2) + 1e-9));
        var best = FirstFit(sizes, room);
        for (var bars = Math.Max(1, bound); bars < best.Count; bars++)
        {
            if (Search(sizes, room, bars) is { } fewer)
            {
                best = fewer;
                break;
            }
        }

        return new(
            [.. best.Select(bar => bar.Select(k => fits[k]).ToImmutableArray())],
            bound,
            [.. Enumerable.Range(0, lengths.Length).Except(fits)]);
    }

    private static List<List<int>> FirstFit(double[] sizes, double room)
    {
        var (bars, left) = (new List<List<int>>(), new List<double>());
        for (var k = 0; k < sizes.Length; k++)
        {
            var bar = left.FindIndex(free => sizes[k] <= free + 1e-9);
            if (bar < 0)
            {
                bars.Add([]);
                left.Add(room);
                bar = bars.Count - 1;
            }

            bars[bar].Add(k);
            left[bar] -= sizes[k];
        }

        return bars;
    }

    /// <summary>Null where the pieces do not go into so many bars, or the search was given up.</summary>
    private static List<List<int>>? Search(double[] sizes, double room, int bars)
    {
        var (held, left, tries) = (Enumerable.Range(0, bars).Select(_ => new List<int>()).ToList(), new double[bars], 0);
        Array.Fill(left, room);
        return Place(0) ? held : null;

        bool Place(int k)
        {
            if (k == sizes.Length)
                return true;
            var seen = new HashSet<double>();
            for (var bar = 0; bar < bars; bar++)
            {
                // Bars with the same room left are the same bar.
                if (sizes[k] > left[bar] + 1e-9 || !seen.Add(left[bar]) || ++tries > MostTries)
                    continue;
                held[bar].Add(k);
                left[bar] -= sizes[k];
                if (Place(k + 1))
                    return true;
                held[bar].RemoveAt(held[bar].Count - 1);
                left[bar] += sizes[k];
            }

            return false;
        }
    }
}
