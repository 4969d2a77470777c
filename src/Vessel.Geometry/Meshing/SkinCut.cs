namespace Vessel.Geometry;

/// <summary>
/// Where a skin that comes round again is cut open so that it can be triangulated in a plane: an angle as far as can
/// be from whatever its bounds do.
/// </summary>
internal static class SkinCut
{
    /// <summary>Cuts lie on whole steps, so that the skins on both sides of a wall choose one line or two far apart.</summary>
    private const int Steps = 720;

    private const int Samples = 256;

    /// <summary>Chart u of the cut; null for a skin that does not come round.</summary>
    public static double? Of(Skin skin)
    {
        if (skin.On.Period is not { } period)
            return null;
        var shadows = skin.Bounds.Where(bound => bound.Winding == 0).Select(bound => Extent(bound, period)).ToList();
        var corners = skin.Bounds
            .SelectMany(bound => bound.Edge.Breaks.Append(bound.Edge.Domain.Start).Append(bound.Edge.Domain.End)
                .Select(t => bound.Image(t).U / period))
            .ToList();
        var best = Enumerable.Range(0, Steps)
            .Select(step => (double)step / Steps)
            .MaxBy(cut => Freedom(cut, shadows, corners));
        return best * period;
    }

    private static Interval Extent(Bound bound, double period)
    {
        var us = Enumerable.Range(0, Samples + 1)
            .Select(i => bound.Image(bound.Edge.Domain.At((double)i / Samples)).U / period)
            .ToList();
        return new(us.Min(), us.Max());
    }

    /// <summary>
    /// Distance, in turns, to the nearest thing to keep away from; less one where the cut would run through a hole.
    /// </summary>
    private static double Freedom(double cut, List<Interval> shadows, List<double> corners)
    {
        var distance = corners.Select(corner => Apart(cut, corner)).DefaultIfEmpty(1).Min();
        // A corner only has to be missed, and a degree is enough; a hole is better missed by far.
        distance = distance > 1.0 / 360 ? 1.0 / 360 : distance - 1;
        var inside = 0;
        var clear = 1.0;
        foreach (var shadow in shadows)
        {
            clear = Math.Min(clear, Math.Min(Apart(cut, shadow.Start), Apart(cut, shadow.End)));
            if (Turns.From(Turns.Full * (cut - shadow.Start), 0) < Turns.Full * shadow.Length)
                inside++;
        }

        return distance + clear - inside;
    }

    private static double Apart(double a, double b) => Math.Abs(a - b - Math.Round(a - b));
}
