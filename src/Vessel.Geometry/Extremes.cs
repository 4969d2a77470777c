using MathNet.Numerics.RootFinding;

namespace Vessel.Geometry;

/// <summary>Least and greatest value of a smooth function that comes round again.</summary>
public static class Extremes
{
    /// <summary>Places looked at first: between two of them nothing turns twice.</summary>
    private const int Samples = 120;

    /// <summary>Share of the way between two places: a place is then wrong by far less than what a turning value is by.</summary>
    private const double Accuracy = 1e-10;

    /// <summary>Share of a value and of its whole range that rounding makes up, at most.</summary>
    private const double Noise = 1e-13;

    /// <param name="domain">Once round.</param>
    /// <param name="slope">Derivative of the value.</param>
    public static Interval Of(Func<double, double> value, Func<double, double> slope, Interval domain)
    {
        var step = domain.Length / Samples;
        var values = Enumerable.Range(0, Samples).Select(i => value(domain.Start + (i * step))).ToArray();
        var (least, greatest) = (values.Where(double.IsFinite).Min(), values.Where(double.IsFinite).Max());
        double Steady(double t) => slope(t) is var turn && double.IsFinite(turn) ? turn : 0;
        for (var i = 0; i < Samples; i++)
        {
            var (before, here, after) = (values[(i + Samples - 1) % Samples], values[i], values[(i + 1) % Samples]);
            if ((here - before) * (here - after) < 0)
                continue;
            var at = domain.Start + (i * step);
            // What differs from a place by its rounding only is that place.
            if (Brent.TryFindRoot(Steady, at - step, at + step, Accuracy * step, 100, out var turn)
                && value(turn) is var turning && Math.Abs(turning - here) > Noise * (Math.Abs(here) + greatest - least))
                (least, greatest) = (Math.Min(least, turning), Math.Max(greatest, turning));
        }

        return new(least, greatest);
    }
}
