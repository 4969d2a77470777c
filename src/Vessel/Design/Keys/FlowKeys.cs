namespace Vessel.Design;

/// <summary>The keys under <c>flow</c> and <c>engine</c>.</summary>
internal static class FlowKeys
{
    private static KeyMap OwnLiquid { get; } = new("a liquid of your own",
    [
        new("name", KeyKind.Text, "Word by which sentences name it: 'screenwash'") { IsRequired = true },
        new("like", KeyKind.Choice, "Kind whose cautions and metals hold for it")
        {
            Choices = [.. Enum.GetNames<Stock.LiquidKind>().Select(name => name.ToLowerInvariant())], Default = "other",
        },
        new("at", KeyKind.List, "Two temperatures or more; between them density goes straight, the viscosity's logarithm by 1/T")
        {
            IsRequired = true, Items = new(2, 50), Map = new("a temperature",
            [
                new("temperature", KeyKind.Temperature, "Of the liquid") { IsRequired = true, Range = new(-60, 300) },
                new("density", KeyKind.Density, "Of the liquid at that temperature") { IsRequired = true, Range = new(300, 3000) },
                new("viscosity", KeyKind.Viscosity, "Kinematic, at that temperature") { IsRequired = true, Range = new(0.1, 100_000) },
            ]),
        },
        new("source", KeyKind.Text, "Where the figures come from") { IsRequired = true, Longest = Limits.TextLength },
    ]);

    public static KeyMap Flow { get; } = new("the gas that flows through",
    [
        new("blow_by", KeyKind.Flow, "Gas that the engine blows in, as it is in the vessel: at its temperature and pressure")
        {
            DefaultRule = "estimated from the engine where that is given, else not known", Range = new(0.01, 100_000),
        },
        new("liquid", KeyKind.Choice, "Liquid that the vessel catches or holds; 'stock liquids' prints the figures of each")
        {
            Choices = [.. Stock.Liquids.All.Select(liquid => liquid.Name)], Default = Stock.Liquids.Usual.Name,
        },
        new("own_liquid", KeyKind.Mapping, "A liquid of your own, by what its data sheet says")
        {
            DefaultRule = "none: the one named by 'liquid'", Map = OwnLiquid,
        },
        new("oil_density", KeyKind.Density, "Of the liquid, where it is known better than its name tells")
        {
            DefaultRule = "that of the liquid at the temperature", Range = new(500, 1500),
        },
        new("oil_viscosity", KeyKind.Viscosity, "Of the liquid at the temperature, where it is known better than its name tells")
        {
            DefaultRule = "that of the liquid at the temperature", Range = new(0.3, 100_000),
        },
        new("temperature", KeyKind.Temperature, "Of gas and liquid") { Default = "80 degC", Range = new(-60, 250) },
        new("surroundings", KeyKind.Temperature, "Of the air round the vessel")
        {
            Default = "20 degC", Range = new(-60, 150),
        },
        new("pressure", KeyKind.Pressure, "Of the gas in the vessel above the air round it; below it is negative")
        {
            Default = "0 mbar", Range = new(-500, 1000),
        },
        new("hose_length", KeyKind.Length, "Of the hose that brings the gas to the inlet")
        {
            DefaultRule = "none: the loss begins at the inlet", Range = new(1, 100_000),
        },
        new("hose_bore", KeyKind.Length, "Of that hose, or of its narrowest fitting")
        {
            DefaultRule = "the outside diameter of the inlet's tube that it is pushed over, or the bore of the inlet's fitting",
            AppliesWhen = new("hose_length", null), Range = new(1, 1000),
        },
        new("most_loss", KeyKind.Pressure, "Greatest loss of pressure allowed, from the hose's start, or else the inlet, to the vent")
        {
            Default = "10 mbar", Range = new(0.1, 1000),
        },
        new("order", KeyKind.Texts, "Inlet, openings that the gas takes one after the other, and vent, by their names")
        {
            DefaultRule = "as found: the path of least resistance from the first open port to the highest", Items = new(2, 50),
        },
    ])
    {
        MayBeEmpty = true,
    };

    public static KeyMap Engine { get; } = new("the engine",
    [
        new("displacement", KeyKind.Volume, "Of all cylinders") { IsRequired = true, Range = new(0.01, 1000) },
        new("speed", KeyKind.Speed, "Speed at which it blows by most: its rated speed") { IsRequired = true, Range = new(50, 25_000) },
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
