using System.Globalization;
using Vessel.Function;
using Vessel.Parts;

namespace Vessel.Export;

/// <summary>
/// Figures of a table for people, rounded to what a hand can measure, weigh or plan; the column's name ends with its unit.
/// </summary>
internal static class HandFigures
{
    /// <exception cref="ArgumentException">Not a finite number: a bug of whoever computed it.</exception>
    public static string Text(double value, string column)
    {
        if (!double.IsFinite(value))
            throw new ArgumentException($"a figure to be written is {value}");
        return column switch
        {
            _ when column.Contains("_per_", StringComparison.Ordinal) => FigureText.Of(value),
            _ when column.EndsWith("_mm", StringComparison.Ordinal) => NoteText.Length(value),
            _ when column.EndsWith("_deg", StringComparison.Ordinal) => Numbers.Text(value, 1),
            _ when column.EndsWith("_g", StringComparison.Ordinal) => Numbers.Text(HalfSteps(value), 1),
            _ when column.EndsWith("_min", StringComparison.Ordinal) => Minutes(value),
            _ when IsMoney(column) => Numbers.Text(value, 2),
            _ when value == Math.Round(value) => Numbers.Text(value, 0),
            _ => FigureText.Of(value),
        };
    }

    /// <summary>Whole minutes; of short work halves, so that it does not vanish.</summary>
    private static string Minutes(double value)
    {
        const double shortWork = 5;
        if (value >= shortWork)
            return value.ToString("0", CultureInfo.InvariantCulture);
        return Numbers.Text(value > 0 ? Math.Max(0.5, HalfSteps(value)) : value, 1);
    }

    private static double HalfSteps(double value) => Math.Round(2 * value) / 2;

    private static bool IsMoney(string column) =>
        column is "price" or "hand_low" or "hand_likely" or "hand_high" or "laser_low" or "laser_likely" or "laser_high";
}
