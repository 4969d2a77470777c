using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>What a port is there for.</summary>
public enum PortPurpose
{
    GasIn,
    GasOut,
    Vent,
    LiquidIn,
    LiquidOut,
    Fill,
    Overflow,
    Drain,
    Sight,
    Sensor,
    Plugged,
    Spare,
}

/// <summary>Purposes by their words, and what they mean in use.</summary>
public static class PortPurposes
{
    /// <summary>Words of the file, in the order of the purposes.</summary>
    public static ImmutableArray<string> Words { get; } =
        ["gas_in", "gas_out", "vent", "liquid_in", "liquid_out", "fill", "overflow", "drain", "sight", "sensor", "plugged", "spare"];

    /// <summary>The purpose of a word; null where it is none.</summary>
    public static PortPurpose? Find(string? word) => word is not null && Words.IndexOf(word) is >= 0 and var i ? (PortPurpose)i : null;

    /// <summary>The word for a person: <c>gas in</c>.</summary>
    public static string Word(this PortPurpose purpose) => Words[(int)purpose].Replace('_', ' ');

    /// <summary>
    /// Whether air passes it in use. The others are shut by a cap, a plug, a valve or a gauge, or their pipe stands full of liquid.
    /// </summary>
    public static bool IsOpenToAir(this PortPurpose purpose) =>
        purpose is PortPurpose.GasIn or PortPurpose.GasOut or PortPurpose.Vent or PortPurpose.Overflow;
}
