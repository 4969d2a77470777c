using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What the mounting bears.</summary>
/// <param name="Acceleration">Acceleration in any direction, multiples of gravity.</param>
/// <param name="IsGiven">The file says the acceleration; else it is the duty's.</param>
/// <param name="DutyIsGiven">The file says the duty.</param>
public sealed record MountingDesign(string Path, double Acceleration, bool IsGiven, MountDuty Duty, bool DutyIsGiven)
{
    public static MountingDesign Usual { get; } = Of("mounting", null, null, false);

    /// <param name="hasEngine">Decides the duty where neither is given.</param>
    public static MountingDesign Of(string path, double? acceleration, MountDuty? duty, bool hasEngine)
    {
        var taken = duty ?? (hasEngine ? MountDuties.Vehicle : MountDuties.Fixed);
        return new(path, acceleration ?? taken.Acceleration, acceleration is not null, taken, duty is not null);
    }
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
