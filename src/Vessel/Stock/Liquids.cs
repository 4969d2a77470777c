using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Liquids by name. Brands differ: what a data sheet says goes before it.</summary>
public static class Liquids
{
    /// <summary>mm2/s: beyond it an oil no longer pours.</summary>
    public const double Stiff = 1e5;

    private const string Grades =
        "viscosity: common values of data sheets within SAE J300, density 0.0007 less a degree above 15 degC [practice]; between and "
        + "beyond 40 and 100 degC by Walther's law (ASTM D341)";

    private const string Iso =
        "viscosity at 40 degC by ISO 3448, at 100 degC for an index of about 100, density 0.0007 less a degree above 15 degC [practice]; "
        + "Walther's law (ASTM D341)";

    public static ImmutableArray<Liquid> All { get; } =
    [
        Engine("engine oil", 880, 100, 11),
        Engine("engine oil sae 30", 886, 95, 11.2),
        Engine("engine oil sae 40", 890, 140, 14.5),
        Engine("engine oil 5w-30", 855, 62, 10.6),
        Engine("engine oil 5w-40", 855, 84, 14),
        Engine("engine oil 10w-30", 866, 66, 10.4),
        Engine("engine oil 10w-40", 868, 97, 14.4),
        Engine("engine oil 15w-40", 878, 108, 14.5),
        Engine("engine oil 20w-50", 885, 160, 18),
        Oil("gear oil 80w-90", "oil", 895, 140, 14.5, "common values of data sheets, no source; Walther's law (ASTM D341)"),
        Oil("hydraulic oil 32", "oil", 872, 32, 5.4, Iso),
        Oil("hydraulic oil 46", "oil", 877, 46, 6.8, Iso),
        Oil("hydraulic oil 68", "oil", 882, 68, 8.7, Iso),
        Oil("compressor oil 100", "oil", 882, 100, 11.2, Iso),
        Oil("diesel", "diesel", 835, 2.7, 1.15,
            "within EN 590 (820 to 845 kg/m3 at 15 degC, 2 to 4.5 mm2/s at 40): not checked against the source; Walther's law (ASTM D341)",
            0.00083) with { Kind = LiquidKind.Diesel },
        new(
            "petrol", "petrol", false, [(0, 758, 0.77), (20, 740.5, 0.62), (40, 723, 0.51)],
            "density within EN 228 (720 to 775 kg/m3 at 15 degC) and viscosity: not checked against the source")
        {
            Kind = LiquidKind.Petrol,
        },
        new(
            "coolant", "coolant", false,
            [(-17.8, 1087.6, 20.2), (4.4, 1080.8, 6.01), (26.7, 1071.6, 2.61), (48.9, 1059.9, 1.415), (71.1, 1046.0, 0.908),
                (93.3, 1029.5, 0.680)],
            "half water, half ethylene glycol by volume: densities of ASHRAE Fundamentals in a pipe maker's manual, viscosities of an "
                + "engineer's table")
        {
            Kind = LiquidKind.Coolant,
        },
        new(
            "water", "water", false,
            [
                (0, 999.84, 1.792), (10, 999.70, 1.3065), (20, 998.21, 1.0034), (30, 995.65, 0.8007), (40, 992.22, 0.6581),
                (50, 988.03, 0.5531),
                (60, 983.20, 0.4740), (70, 977.76, 0.4127), (80, 971.79, 0.3643), (90, 965.31, 0.3255), (100, 958.35, 0.2938),
            ],
            "tables of pure water (IAPWS), not checked against the source")
        {
            Kind = LiquidKind.Water,
        },
        new(
            "brine", "brine", false,
            [(0, 1156, 2.42), (20, 1148, 1.357), (40, 1139, 0.890), (60, 1129, 0.641), (80, 1118, 0.4926)],
            "20 % salt by mass: density and viscosity at 20 degC of a handbook of chemistry (not checked against the source), elsewhere in proportion to water's")
        {
            Kind = LiquidKind.Brine,
        },
    ];

    /// <summary>Where the file names none.</summary>
    public static Liquid Usual => All[0];

    public static Liquid? Find(string name) => All.FirstOrDefault(liquid => liquid.Name == name);

    private static Liquid Engine(string name, double density, double warm, double hot) =>
        Oil(name, "oil", density, warm, hot, Grades) with { IsEngineOil = true };

    /// <param name="density">Density at 15 degC.</param>
    private static Liquid Oil(
        string name, string word, double density, double warm, double hot, string source, double swelling = 0.0007) => new(
        name, word, true, [(40, density * (1 - (25 * swelling)), warm), (100, density * (1 - (85 * swelling)), hot)], source);
}
