using Vessel.Stock;

namespace Vessel.Design;

/// <summary>The keys under <c>mounting</c>, <c>leak_test</c> and <c>drain_back</c>.</summary>
internal static class DutyKeys
{
    public static KeyMap Mounting { get; } = new("the load on the mounting",
    [
        new("duty", KeyKind.Choice, "Place of the vessel, which sets the acceleration")
        {
            DefaultRule = "vehicle where an engine is given, else fixed", Choices = [.. MountDuties.All.Select(duty => duty.Name)],
        },
        new("acceleration", KeyKind.Ratio, "Greatest, in any direction, as a multiple of gravity, its own weight included")
        {
            DefaultRule = $"by the duty: {string.Join(", ", MountDuties.All.Select(duty => FormattableString.Invariant($"{duty.Name} {duty.Acceleration}")))}",
            Range = new(0.1, 100),
        },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap LeakTest { get; } = new("the leak test",
    [
        new("pressure", KeyKind.Pressure, "Above the air round the vessel, at the test")
        {
            Default = "200 mbar", Range = new(1, 20_000),
        },
        new("suction", KeyKind.Pressure, "Below the air round the vessel, at worst in use")
        {
            Default = "100 mbar", Range = new(0, 1000),
        },
        new("with", KeyKind.Choice, "Test medium") { Choices = ["water", "air"], Default = "water" },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap DrainBack { get; } = new("the way of the oil back to the sump",
    [
        new("head", KeyKind.Length, "From the oil that it returns to up to the vessel's lowest place")
        {
            DefaultRule = "not known", Range = CommonKeys.FromZero,
        },
        new("bore", KeyKind.Length, "Of the hose, or of the narrowest fitting in it")
        {
            DefaultRule = "that of the lowest bung's fitting, or its tap drill", Range = new(1, 500),
        },
        new("length", KeyKind.Length, "Of the hose") { DefaultRule = "the head", Range = new(1, 100_000) },
        new("depression", KeyKind.Pressure, "Suction of the vessel against the sump")
        {
            DefaultRule = "the upper bound of the loss from inlet to vent", Range = new(0, 1000),
        },
    ])
    {
        MayBeEmpty = true,
    };
}
