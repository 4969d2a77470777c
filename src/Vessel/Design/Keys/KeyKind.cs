namespace Vessel.Design;

/// <summary>What the value of a key is.</summary>
public enum KeyKind
{
    Text,
    Choice,
    Material,
    Thread,
    Length,
    Angle,
    Flow,
    Density,
    Temperature,
    Pressure,

    /// <summary>Kinematic.</summary>
    Viscosity,

    /// <summary>Speed of turning.</summary>
    Speed,
    Volume,
    Duration,

    /// <summary>A plain number.</summary>
    Ratio,

    /// <summary>A whole number of things.</summary>
    Count,
    Mapping,

    /// <summary>A list of mappings.</summary>
    List,

    /// <summary>One mapping, or a list of them.</summary>
    OneOrList,

    /// <summary>A list of texts.</summary>
    Texts,

    /// <summary>A mapping whose keys the user names and whose values are quantities.</summary>
    Sizes,

    /// <summary>A mapping whose keys the user names and whose values are mappings of paths to single values.</summary>
    Variants,
}

/// <summary>The units behind a kind of number.</summary>
internal static class KeyKinds
{
    public static bool IsNumber(this KeyKind kind) => kind is >= KeyKind.Length and <= KeyKind.Count;

    public static Dimension Dimension(this KeyKind kind) => kind.ShownUnit(UserUnits.Millimetres).Dimension;

    /// <summary>The unit of a bare number, and of numbers shown to the user.</summary>
    public static Unit ShownUnit(this KeyKind kind, UserUnits units) => kind switch
    {
        KeyKind.Length => units == UserUnits.Inches ? Unit.Inch : Unit.Millimetre,
        KeyKind.Angle => Unit.Degree,
        KeyKind.Flow => Unit.LitrePerMinute,
        KeyKind.Density => Unit.KilogramPerCubicMetre,
        KeyKind.Temperature => Unit.Celsius,
        KeyKind.Pressure => Unit.Millibar,
        KeyKind.Viscosity => Unit.SquareMillimetrePerSecond,
        KeyKind.Speed => Unit.TurnPerMinute,
        KeyKind.Volume => Unit.OneLitre,
        KeyKind.Duration => Unit.Hour,
        KeyKind.Ratio or KeyKind.Count => Unit.None,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "has no unit"),
    };

    /// <summary>
    /// What a held value (see <see cref="Unit"/>) is divided by for the model: L/min, Pa, mm2/s, L and h there.
    /// </summary>
    public static double ModelFactor(this KeyKind kind) => kind switch
    {
        KeyKind.Flow or KeyKind.Viscosity or KeyKind.Volume or KeyKind.Duration => kind.ShownUnit(UserUnits.Millimetres).Factor,
        KeyKind.Pressure => Unit.Pascal.Factor,
        _ => 1,
    };
}
