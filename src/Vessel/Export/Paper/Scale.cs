using System.Globalization;

namespace Vessel.Export.Paper;

/// <summary>A scale of the usual series (ISO 5455, with 1:2.5 and 1:4 between its steps).</summary>
/// <param name="Factor">Paper over part.</param>
internal sealed record Scale(string Name, double Factor)
{
    private static readonly double[] _steps = [1, 2, 2.5, 4, 5];

    /// <summary>The largest, from 10:1 down, at which so much fits into so much.</summary>
    public static Scale Largest(double width, double height, double roomWidth, double roomHeight)
    {
        var fits = Math.Min(roomWidth / Math.Max(width, 1e-9), roomHeight / Math.Max(height, 1e-9));
        double[] larger = [10, 5, 2, 1];
        foreach (var factor in larger)
        {
            if (factor <= fits)
                return new(string.Create(CultureInfo.InvariantCulture, $"{factor}:1"), factor);
        }

        for (var ten = 1.0; ; ten *= 10)
        {
            foreach (var step in _steps)
            {
                if (1 / (ten * step) <= fits)
                    return new(string.Create(CultureInfo.InvariantCulture, $"1:{ten * step}"), 1 / (ten * step));
            }
        }
    }
}
