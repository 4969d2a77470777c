using System.Globalization;

namespace Vessel.Function;

/// <summary>Round volumes with the levels that hold them, for a dipstick or gauge; all rooms level.</summary>
internal static class GaugeScale
{
    private const int MostMarks = 24;

    /// <summary>Two hundredths of a millilitre: less than a pen is wide. mm3.</summary>
    private const double Near = 20;

    /// <summary>Heights in the vessel's frame, mm; volumes in mm3; text in ml. From the bottom up.</summary>
    public static IEnumerable<(double Height, double Volume, string Text)> Of(Attitude attitude, Capacity capacity)
    {
        var levels = capacity.Levels;
        var step = Step(levels[^1].Volume / 1000);
        var at = 0;
        for (var i = 1; i * step * 1000 <= levels[^1].Volume; i++)
        {
            var volume = i * step * 1000;
            while (at + 2 < levels.Length && levels[at + 1].Volume < volume)
                at++;
            yield return (
                Level(attitude, volume, levels[at], levels[at + 1]),
                volume,
                (i * step).ToString("0.###", CultureInfo.InvariantCulture));
        }
    }

    /// <summary>1, 2 or 5 times a power of ten, ml.</summary>
    private static double Step(double most)
    {
        for (var ten = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(most, 1e-3) / MostMarks))); ; ten *= 10)
        {
            foreach (var step in new[] { 1, 2, 5 })
            {
                if (most / (step * ten) <= MostMarks)
                    return step * ten;
            }
        }
    }

    /// <summary>False position on a rising volume, held between two levels of the table.</summary>
    private static double Level(
        Attitude attitude, double volume, (double Height, double Volume) lower, (double Height, double Volume) upper)
    {
        var (low, high) = (lower.Height, upper.Height);
        var (below, above) = (lower.Volume - volume, upper.Volume - volume);
        for (var i = 0; i < 12 && above > below && high - low > 1e-3; i++)
        {
            // A step in the middle by turns, so that one end does not stay behind.
            var at = i % 3 == 2 ? (low + high) / 2 : low - (below * (high - low) / (above - below));
            var off = attitude.VolumeBelow(at) - volume;
            if (off < 0)
                (low, below) = (at, off);
            else
                (high, above) = (at, off);
            if (Math.Abs(off) < Near)
                return at;
        }

        return (low + high) / 2;
    }
}
