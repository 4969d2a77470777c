namespace Vessel.Design;

/// <summary>The keys under <c>flow</c> and <c>engine</c>.</summary>
internal static class FlowKeys
{
    public static KeyMap Flow { get; } = new("the gas that flows through",
    [
        new("blow_by", KeyKind.Flow, "Gas that the engine blows in")
        {
            DefaultRule = "estimated from the engine where that is given, else not known", Range = new(0.01, 100_000),
        },
        new("oil_density", KeyKind.Density, "Of the oil") { Default = "870 kg/m3", Range = new(500, 1500) },
        new("oil_viscosity", KeyKind.Viscosity, "Of the oil at its temperature")
        {
            DefaultRule = "that of a usual engine oil at the temperature", Range = new(0.3, 100_000),
        },
        new("temperature", KeyKind.Temperature, "Of gas and oil") { Default = "80 degC", Range = new(-60, 250) },
        new("surroundings", KeyKind.Temperature, "Of the air round the vessel")
        {
            Default = "20 degC", Range = new(-60, 150),
        },
        new("pressure", KeyKind.Pressure, "Of the gas in the vessel above the air round it; below it is negative")
        {
            Default = "0 mbar", Range = new(-500, 1000),
        },
        new("most_loss", KeyKind.Pressure, "Greatest loss of pressure from inlet to vent that is taken")
        {
            Default = "10 mbar", Range = new(0.1, 1000),
        },
        new("order", KeyKind.Texts, "Inlet, openings that the gas takes one after the other, and vent, by their names")
        {
            DefaultRule = "as found: the way of least resistance from the first open port to the highest", Items = new(2, 50),
        },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap Engine { get; } = new("the engine",
    [
        new("displacement", KeyKind.Volume, "Of all cylinders") { IsRequired = true, Range = new(0.01, 1000) },
        new("speed", KeyKind.Speed, "Speed of the greatest blow-by: its rated speed") { IsRequired = true, Range = new(50, 25_000) },
        new("boost", KeyKind.Pressure, "Of the charger above the air round it; 0 without one")
        {
            Default = "0 mbar", Range = new(0, 6000),
        },
        new("condition", KeyKind.Choice, "Condition of its rings")
        {
            Choices = ["sound", "worn"], Default = "sound",
        },
    ]);
}
