namespace Vessel.Design;

/// <summary>What the mounting bears.</summary>
/// <param name="Acceleration">In any direction, multiples of gravity.</param>
/// <param name="IsGiven">The file says so; else it is the default.</param>
public sealed record MountingDesign(string Path, double Acceleration, bool IsGiven)
{
    public static MountingDesign Usual { get; } = new("mounting", 5, false);
}

/// <summary>What the vessel is filled with at its leak test.</summary>
public enum TestMedium
{
    Water,
    Air,
}

/// <summary>The leak test and the suction in use.</summary>
/// <param name="Pressure">Above the air round it, Pa.</param>
/// <param name="Suction">Below the air round it, Pa.</param>
public sealed record LeakTestDesign(string Path, double Pressure, double Suction, TestMedium With)
{
    public static LeakTestDesign Usual { get; } = new("leak_test", 20_000, 10_000, TestMedium.Water);
}

/// <summary>The way of the oil back; null where the file does not say.</summary>
/// <param name="Head">mm of oil.</param>
/// <param name="Bore">mm.</param>
/// <param name="Length">mm.</param>
/// <param name="Depression">Pa.</param>
public sealed record DrainDesign(string Path, double? Head, double? Bore, double? Length, double? Depression)
{
    public static DrainDesign Unknown { get; } = new("drain_back", null, null, null, null);
}
