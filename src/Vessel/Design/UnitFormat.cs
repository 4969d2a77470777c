using System.Globalization;

namespace Vessel.Design;

/// <summary>Numbers as the user reads them in faults, in the units of the file.</summary>
/// <remarks>
/// What is given stays as it is, to a thousandth. A computed limit is told to what a hand can set and always to the sound side: to a tenth
/// of a millimetre, to a hundredth below 3 mm and to a thousandth below 1; in inches to a digit more.
/// </remarks>
internal readonly record struct UnitFormat(UserUnits Units)
{
    /// <summary>Nearness to a hundredth to which nothing but rounding moves a number.</summary>
    private const double Noise = 1e-7;

    /// <summary>Length to a hundredth of a millimetre, below 1 mm to a thousandth; a digit more in inches.</summary>
    public string Length(double mm) =>
        Rounded(KeyKind.Length, mm, (number, fine) => Math.Round(number, Math.Abs(number) < 1 ? 3 + fine : 2 + fine));

    /// <summary>A least length, rounded up.</summary>
    public string LengthUp(double mm) => Rounded(KeyKind.Length, mm, (number, fine) => -Floor(-number, fine));

    /// <summary>A greatest length, rounded down.</summary>
    public string LengthDown(double mm) => Rounded(KeyKind.Length, mm, Floor);

    public string Angle(double radians) => Rounded(KeyKind.Angle, radians, (number, _) => Math.Round(number, 2));

    /// <summary>A least angle, rounded up.</summary>
    public string AngleUp(double radians) => Rounded(KeyKind.Angle, radians, (number, _) => -Floor(-number, 0));

    /// <summary>A greatest angle, rounded down.</summary>
    public string AngleDown(double radians) => Rounded(KeyKind.Angle, radians, (number, _) => Floor(number, 0));

    /// <summary>A length as it is given: to a thousandth of a millimetre, or a ten-thousandth of an inch.</summary>
    /// <param name="value">Value in the units of the model.</param>
    public string Number(KeyKind kind, double value) => Rounded(kind, value, (number, fine) => Math.Round(number, 3 + fine));

    private string Rounded(KeyKind kind, double value, Func<double, int, double> round)
    {
        var unit = kind.ShownUnit(Units);
        var number = ((value * kind.ModelFactor()) - unit.Shift) / unit.Factor;
        // Adding zero turns -0 into 0.
        var text = (round(number, kind == KeyKind.Length && Units == UserUnits.Inches ? 1 : 0) + 0.0)
            .ToString("0.####", CultureInfo.InvariantCulture);
        return $"{text} {unit.Name}".TrimEnd();
    }

    private static double Floor(double number, int fine)
    {
        if (Math.Abs(number - Math.Round(number, 2 + fine)) < Noise)
            return Math.Round(number, 2 + fine);
        var factor = Math.Pow(10, (Math.Abs(number) < 1 ? 3 : Math.Abs(number) < 3 ? 2 : 1) + fine);
        return Math.Floor((factor * number) + Noise) / factor;
    }
}
