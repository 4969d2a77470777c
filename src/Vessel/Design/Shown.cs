using System.Globalization;

namespace Vessel.Design;

/// <summary>Numbers as the user reads them in faults, in the units of the file.</summary>
internal readonly record struct Shown(UserUnits Units)
{
    /// <summary>To a thousandth of a millimetre, or a ten-thousandth of an inch.</summary>
    public string Length(double mm) => Number(KeyKind.Length, mm);

    public string Angle(double radians) => Number(KeyKind.Angle, radians);

    /// <param name="value">In the units of the model.</param>
    public string Number(KeyKind kind, double value)
    {
        var unit = kind.ShownUnit(Units);
        var number = ((value * kind.ModelFactor()) - unit.Shift) / unit.Factor;
        var digits = kind == KeyKind.Length && Units == UserUnits.Inches ? "0.####" : "0.###";
        var text = number.ToString(digits, CultureInfo.InvariantCulture);
        return $"{(text == "-0" ? "0" : text)} {unit.Name}".TrimEnd();
    }
}
