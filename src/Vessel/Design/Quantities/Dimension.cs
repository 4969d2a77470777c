namespace Vessel.Design;

/// <summary>The physical kind of a quantity, as powers of length, angle, mass, time and temperature.</summary>
internal readonly record struct Dimension(int Length, int Angle, int Mass, int Time, int Temperature)
{
    public static Dimension None => default;

    public static Dimension OfLength => new(1, 0, 0, 0, 0);

    public static Dimension OfAngle => new(0, 1, 0, 0, 0);

    public static Dimension OfVolume => new(3, 0, 0, 0, 0);

    public static Dimension OfFlow => new(3, 0, 0, -1, 0);

    public static Dimension OfDensity => new(-3, 0, 1, 0, 0);

    public static Dimension OfTemperature => new(0, 0, 0, 0, 1);

    public static Dimension OfPressure => new(-1, 0, 1, -2, 0);

    public static Dimension OfViscosity => new(2, 0, 0, -1, 0);

    public static Dimension OfSpeed => new(0, 0, 0, -1, 0);

    public static Dimension OfTime => new(0, 0, 0, 1, 0);

    public static Dimension operator *(Dimension a, Dimension b) => new(
        a.Length + b.Length, a.Angle + b.Angle, a.Mass + b.Mass, a.Time + b.Time, a.Temperature + b.Temperature);

    public static Dimension operator /(Dimension a, Dimension b) => new(
        a.Length - b.Length, a.Angle - b.Angle, a.Mass - b.Mass, a.Time - b.Time, a.Temperature - b.Temperature);

    /// <summary>Name by which a fault calls it: <c>a length</c>.</summary>
    public override string ToString() =>
        this == None ? "a ratio"
        : this == OfLength ? "a length"
        : this == OfAngle ? "an angle"
        : this == OfVolume ? "a volume"
        : this == OfFlow ? "a flow"
        : this == OfDensity ? "a density"
        : this == OfTemperature ? "a temperature"
        : this == OfPressure ? "a pressure"
        : this == OfViscosity ? "a kinematic viscosity"
        : this == OfSpeed ? "a speed of turning"
        : this == OfTime ? "a time"
        : this == new Dimension(2, 0, 0, 0, 0) ? "an area"
        : "neither a length nor an angle nor any other kind of value used here";
}
