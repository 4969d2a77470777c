using System.Globalization;

namespace Vessel.Function;

/// <summary>Figures as they are read: three digits that count, or whole where there are more before the point.</summary>
public static class FigureText
{
    private const int Digits = 3;

    /// <summary>Least figure shown in mm and J: below it nobody can measure or feel a figure, and its digits only look exact.</summary>
    private const double Felt = 0.01;

    /// <summary>A time below it is said in seconds.</summary>
    private const double ShortMinutes = 2;

    /// <summary>Value with its unit: <c>3.87 to 11.1 Pa, likely 5.98</c>.</summary>
    public static string Of(Amount value, string unit)
    {
        // Six seconds, not a tenth of a minute; nobody stops a drain to a part of a second.
        if (unit == "min" && value is { Low: > 0, High: < ShortMinutes })
            return Of(new(Seconds(value.Low), Seconds(value.Likely), Seconds(value.High)), "s");
        var after = unit.Length == 0 ? string.Empty : unit == "%" ? " %" : $" {unit}";
        if (unit is "mm" or "J" && value is { Low: > 0, High: < Felt })
            return $"under {Of(Felt)}{after}";
        var (low, likely, high) = (Of(value.Low), Of(value.Likely), Of(value.High));
        return low == high ? $"{likely}{after}" : $"{low} to {high}{after}, likely {likely}";
    }

    private static double Seconds(double minutes) => Math.Max(1, Math.Round(60 * minutes));

    public static string Of(double value)
    {
        if (value == 0 || !double.IsFinite(value))
            return value == 0 ? "0" : "-";
        var power = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (power is < -5 or > 9)
            return value.ToString("0.###e0", CultureInfo.InvariantCulture);
        var rounded = Math.Round(value, Math.Clamp(Digits - 1 - power, 0, 12));
        return rounded.ToString("0.############", CultureInfo.InvariantCulture);
    }
}
