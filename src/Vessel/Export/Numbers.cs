using System.Globalization;

namespace Vessel.Export;

/// <summary>How figures are written, in every format: to 1e-6 of their unit, shortest, no exponent, never -0.</summary>
public static class Numbers
{
    /// <exception cref="ArgumentException">Not a finite number: a bug of whoever computed it.</exception>
    public static string Text(double value, int digits = 6)
    {
        if (!double.IsFinite(value))
            throw new ArgumentException($"a figure to be written is {value}");
        var text = value.ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        if (text.Contains('.', StringComparison.Ordinal))
            text = text.TrimEnd('0').TrimEnd('.');
        return text == "-0" ? "0" : text;
    }

    /// <summary>The number that <see cref="Text"/> writes.</summary>
    public static double Rounded(double value) => double.Parse(Text(value), CultureInfo.InvariantCulture);
}
