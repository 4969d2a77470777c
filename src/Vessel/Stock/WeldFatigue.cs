namespace Vessel.Stock;

/// <summary>What welds stand of stress that comes and goes; ranges from least to greatest, MPa at two million cycles.</summary>
/// <param name="ToeLow">Structural stress at the toe of a fillet that carries the load.</param>
/// <param name="ToeHigh">The same of one that carries none.</param>
/// <param name="Root">Range of stress on the throat, pull and bending together, cracked from its root.</param>
public sealed record WeldFatigue(double ToeLow, double ToeHigh, double Root)
{
    public const string Source =
        "IIW recommendations for fatigue design (A. Hobbacher): structural stress at the toe FAT 90 and 100, pull and bending on the "
        + "throat from its root FAT 80 "
        + "(W. Fricke); aluminium 36, 40 and, scaled alike, 28; limit at ten million cycles (classes not checked against the source)";

    /// <summary>Factor from two to ten million cycles on a slope of 3: below that a steady range does no more harm.</summary>
    public static double Limit { get; } = Math.Pow(0.2, 1.0 / 3);

    public static WeldFatigue Of(MaterialFamily family) => family == MaterialFamily.Aluminium ? new(36, 40, 28) : new(90, 100, 80);
}

/// <summary>Shaking that a test asks for.</summary>
/// <param name="From">Hz.</param>
/// <param name="Amplitude">Acceleration at its upper end, multiples of gravity.</param>
public sealed record ShakeTest(string Name, double From, double To, double Amplitude)
{
    public const string Source = "IACS unified requirement E10, vibration (not checked against the source)";

    public static ShakeTest General { get; } = new("IACS E10, general", 2, 100, 0.7);

    public static ShakeTest OnEngine { get; } = new("IACS E10, on a diesel engine", 2, 100, 4);
}
