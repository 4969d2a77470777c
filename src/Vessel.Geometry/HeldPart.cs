using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A small part that hangs by tabs in a frame of its own sheet, lest it falls through the cutter's grate: closed slots all round it, and
/// the frame's outline. On the part's side a slot follows its outline exactly.
/// </summary>
/// <param name="Slots">Clockwise, as holes are.</param>
/// <param name="Frame">Counter-clockwise.</param>
public sealed record HeldPart(ImmutableArray<ImmutableArray<Bulge>> Slots, ImmutableArray<Bulge> Frame)
{
    /// <summary>A tab stands on a smooth stretch: a turn by more is a corner, radians.</summary>
    private const double Corner = 0.035;

    /// <summary>How far a tab may be moved from its even place, as a share of the way to the next.</summary>
    private const double MostMove = 0.3;

    private const int Moves = 60;

    /// <summary>Longer outlines than this many slot widths take a third tab.</summary>
    private const double Long = 40;

    /// <param name="outline">Counter-clockwise.</param>
    /// <param name="slot">Width of the slots, mm.</param>
    /// <param name="tab">Width of a tab on the outline, mm.</param>
    /// <param name="band">Least width of the frame, mm.</param>
    /// <returns>Null where the slot is too wide for the outline's inner corners, or fewer than two tabs find a place.</returns>
    public static HeldPart? Of(ImmutableArray<Bulge> outline, double slot, double tab, double band)
    {
        if (KerfOffset.Right(outline, slot) is not { } around)
            return null;
        var (inner, outer) = (new BulgePath(outline), new BulgePath(around));
        var tabs = Places(inner, slot + tab, inner.Length > Long * slot ? 3 : 2);
        if (tabs.Count < 2)
            return null;
        var slots = tabs.Select(
            (from, i) => Slot(from + (tab / 2), (i + 1 < tabs.Count ? tabs[i + 1] : tabs[0] + inner.Length) - (tab / 2)));
        var (low, high) = CurveMeasures.Bounds(new FittedLoop(around, 0).ToLoop());
        (low, high) = (low - new Point2(band, band), high + new Point2(band, band));
        return new(
            [.. slots], [new(low, 0), new(new(high.U, low.V), 0), new(high, 0), new(new(low.U, high.V), 0)]);

        ImmutableArray<Bulge> Slot(double from, double to)
        {
            double Beside(double along) => outer.Find(inner.At(along) + (slot * inner.Right(along)));
            var (start, end) = (Beside(from), Beside(to));
            return [.. inner.Between(from, to), .. BulgePath.Back(outer.Between(start, end > start ? end : end + outer.Length))];
        }
    }

    /// <summary>Middles of tabs, ascending, as evenly as corners let them be.</summary>
    /// <param name="free">Length from a corner: at an inner one the slot's other side ends as much before it.</param>
    private static List<double> Places(BulgePath path, double free, int count)
    {
        var (corners, pitch) = (path.Corners(Corner).ToList(), path.Length / count);
        double FromCorner(double at) => corners.Count == 0 ? pitch
            : corners.Min(
                corner => Math.Abs(at - corner) is var apart ? Math.Min(apart % path.Length, path.Length - (apart % path.Length)) : 0);
        return
        [
            .. from i in Enumerable.Range(0, count)
               let place = Enumerable.Range(0, Moves + 1)
                   .Select(k => ((i + 0.5) * pitch) + ((k % 2 == 0 ? k : -k - 1) * MostMove * pitch / Moves))
                   .Where(at => FromCorner(at) > free)
                   .Cast<double?>().FirstOrDefault()
               where place is not null
               select place.Value,
        ];
    }
}
