using System.Collections.Immutable;
using UnitsNet.Units;

namespace Vessel.Design;

/// <summary>
/// A unit that may follow a number. Values are held in mm, radians, micrograms, minutes and degrees Celsius:
/// value = number x <paramref name="Factor"/> + <paramref name="Shift"/>.
/// </summary>
/// <param name="Words">Words by which it may be written; the first is how it is shown. Case counts.</param>
internal sealed record Unit(ImmutableArray<string> Words, Dimension Dimension, double Factor, double Shift = 0)
{
    private const double Litre = 1e6;

    public string Name => Words[0];

    public static Unit Millimetre { get; } = Length(LengthUnit.Millimeter, "mm");

    public static Unit Inch { get; } = Length(LengthUnit.Inch, "in", "inch", "inches");

    public static Unit Foot { get; } = Length(LengthUnit.Foot, "ft", "foot", "feet");

    public static Unit Degree { get; } = Angle(AngleUnit.Degree, "deg", "degree", "degrees", "°");

    public static Unit LitrePerMinute { get; } = Flow(VolumeFlowUnit.LiterPerMinute, "L/min", "l/min");

    public static Unit KilogramPerCubicMetre { get; } = Density(DensityUnit.KilogramPerCubicMeter, "kg/m3");

    public static Unit Celsius { get; } = Temperature(TemperatureUnit.DegreeCelsius, "degC", "°C");

    public static Unit Pascal { get; } = Pressure(PressureUnit.Pascal, "Pa");

    public static Unit Millibar { get; } = Pressure(PressureUnit.Millibar, "mbar");

    /// <summary>The kinematic unit of oil tables: a centistokes.</summary>
    public static Unit SquareMillimetrePerSecond { get; } =
        new(["mm2/s", "cSt"], Dimension.OfViscosity, UnitsNet.Duration.From(1, DurationUnit.Minute).Seconds);

    public static Unit TurnPerMinute { get; } = new(["rpm"], Dimension.OfSpeed, 1);

    public static Unit OneLitre { get; } = Volume(VolumeUnit.Liter, "L", "l", "litre", "litres", "liter", "liters");

    public static Unit Hour { get; } = new(
        ["hours", "hour"], Dimension.OfTime, UnitsNet.Duration.From(1, DurationUnit.Hour).Minutes);

    /// <summary>Unit of plain numbers; never written.</summary>
    public static Unit None { get; } = new([""], Dimension.None, 1);

    /// <summary>Sheet gauge: no factor, a table that depends on the metal.</summary>
    public static Unit Gauge { get; } = new(["ga", "gauge"], Dimension.OfLength, double.NaN);

    public static ImmutableArray<Unit> All { get; } =
    [
        Millimetre,
        Inch,
        Foot,
        Length(LengthUnit.Centimeter, "cm"),
        Length(LengthUnit.Meter, "m"),
        Gauge,
        Degree,
        Angle(AngleUnit.Radian, "rad", "radian", "radians"),
        OneLitre,
        Volume(VolumeUnit.Milliliter, "mL", "ml"),
        Volume(VolumeUnit.UsGallon, "gal"),
        LitrePerMinute,
        // By way of the cubic foot: the library's own factor for cfm is rounded at the eleventh digit.
        new(["cfm"], Dimension.OfFlow, UnitsNet.Volume.From(1, VolumeUnit.CubicFoot).Liters * Litre),
        Flow(VolumeFlowUnit.CubicMeterPerHour, "m3/h"),
        KilogramPerCubicMetre,
        Density(DensityUnit.GramPerCubicCentimeter, "g/cm3"),
        Celsius,
        Temperature(TemperatureUnit.DegreeFahrenheit, "degF", "°F"),
        Pascal,
        Pressure(PressureUnit.Kilopascal, "kPa"),
        Millibar,
        Pressure(PressureUnit.Bar, "bar"),
        Pressure(PressureUnit.PoundForcePerSquareInch, "psi"),
        SquareMillimetrePerSecond,
        TurnPerMinute,
        Hour,
    ];

    public static Unit? Find(string word) => All.FirstOrDefault(u => u.Words.Contains(word));

    // The factors of a library, so that none is typed here; only its unit enumerations are used.
    private static Unit Length(LengthUnit unit, params ImmutableArray<string> words) =>
        new(words, Dimension.OfLength, UnitsNet.Length.From(1, unit).Millimeters);

    private static Unit Angle(AngleUnit unit, params ImmutableArray<string> words) =>
        new(words, Dimension.OfAngle, UnitsNet.Angle.From(1, unit).Radians);

    private static Unit Volume(VolumeUnit unit, params ImmutableArray<string> words) =>
        new(words, Dimension.OfVolume, UnitsNet.Volume.From(1, unit).Liters * Litre);

    private static Unit Flow(VolumeFlowUnit unit, params ImmutableArray<string> words) =>
        new(words, Dimension.OfFlow, UnitsNet.VolumeFlow.From(1, unit).LitersPerMinute * Litre);

    private static Unit Density(DensityUnit unit, params ImmutableArray<string> words) =>
        new(words, Dimension.OfDensity, UnitsNet.Density.From(1, unit).KilogramsPerCubicMeter);

    /// <summary>1 Pa = 1 kg/(m s2): 1e9 micrograms over 1000 mm and the square of a sixtieth of a minute.</summary>
    private static Unit Pressure(PressureUnit unit, params ImmutableArray<string> words) =>
        new(words, Dimension.OfPressure, UnitsNet.Pressure.From(1, unit).Pascals * 1e6 * 3600);

    private static Unit Temperature(TemperatureUnit unit, params ImmutableArray<string> words)
    {
        var zero = UnitsNet.Temperature.From(0, unit).DegreesCelsius;
        // A hundred degrees tell the factor with less rounding than one.
        var hundred = UnitsNet.Temperature.From(100, unit).DegreesCelsius;
        return new(words, Dimension.OfTemperature, (hundred - zero) / 100, zero);
    }
}
