using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>What a vessel catches or holds.</summary>
/// <param name="Name">Name by which the file calls it.</param>
/// <param name="Word">Word by which a sentence names it, without an article: <c>oil</c>.</param>
/// <param name="IsOil">True where its viscosity follows Walther's law (ASTM D341); else it is read between the points by 1 / T.</param>
/// <param name="Points">Two or more by rising temperature: degC, kg/m3, and mm2/s.</param>
/// <param name="Source">Source of the points.</param>
public sealed record Liquid(
    string Name, string Word, bool IsOil, ImmutableArray<(double Celsius, double Density, double Viscosity)> Points, string Source)
{
    /// <summary>Whether it is an engine's oil, so that what is known of the oil that engines lose is said of it.</summary>
    public bool IsEngineOil { get; init; }

    /// <summary>Word with a capital letter, to begin a sentence.</summary>
    public string Capital => char.ToUpperInvariant(Word[0]) + Word[1..];

    /// <summary>Temperatures for which the figures hold, degC.</summary>
    public (double Low, double High) Range => IsOil ? (0, 120) : (Points[0].Celsius, Points[^1].Celsius);

    /// <summary>kg/m3, straight between the points and beyond them.</summary>
    public double Density(double celsius)
    {
        var (a, b) = Around(celsius);
        return a.Density + ((celsius - a.Celsius) / (b.Celsius - a.Celsius) * (b.Density - a.Density));
    }

    /// <summary>Kinematic, mm2/s; at most <see cref="Liquids.Stiff"/>, where it no longer pours.</summary>
    public double Viscosity(double celsius)
    {
        var (a, b) = Around(celsius);
        double Along(double at) => IsOil ? Math.Log10(at + Zero) : 1 / (at + Zero);
        double Up(double viscosity) => IsOil ? Math.Log10(Math.Log10(viscosity + Walther)) : Math.Log(viscosity);
        var part = (Along(celsius) - Along(a.Celsius)) / (Along(b.Celsius) - Along(a.Celsius));
        var up = Up(a.Viscosity) + (part * (Up(b.Viscosity) - Up(a.Viscosity)));
        return Math.Min(Liquids.Stiff, IsOil ? Math.Pow(10, Math.Pow(10, up)) - Walther : Math.Exp(up));
    }

    private const double Zero = 273.15;

    /// <summary>mm2/s, of ASTM D341 above 2 mm2/s.</summary>
    private const double Walther = 0.7;

    private ((double Celsius, double Density, double Viscosity) Lower, (double Celsius, double Density, double Viscosity) Upper) Around(
        double celsius)
    {
        var i = 1;
        while (i + 1 < Points.Length && Points[i].Celsius < celsius)
            i++;
        return (Points[i - 1], Points[i]);
    }
}

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
            0.00083),
        new(
            "coolant", "coolant", false,
            [(-17.8, 1087.6, 20.2), (4.4, 1080.8, 6.01), (26.7, 1071.6, 2.61), (48.9, 1059.9, 1.415), (71.1, 1046.0, 0.908),
                (93.3, 1029.5, 0.680)],
            "half water, half ethylene glycol by volume: densities of ASHRAE Fundamentals in a pipe maker's manual, viscosities of an "
                + "engineer's table"),
        new(
            "water", "water", false,
            [
                (0, 999.84, 1.792), (10, 999.70, 1.3065), (20, 998.21, 1.0034), (30, 995.65, 0.8007), (40, 992.22, 0.6581),
                (50, 988.03, 0.5531),
                (60, 983.20, 0.4740), (70, 977.76, 0.4127), (80, 971.79, 0.3643), (90, 965.31, 0.3255), (100, 958.35, 0.2938),
            ],
            "tables of pure water (IAPWS), not checked against the source"),
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
