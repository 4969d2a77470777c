using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>What a liquid is to people and metals.</summary>
public enum LiquidKind
{
    Oil,
    Diesel,
    Petrol,
    Coolant,
    Water,
    Brine,

    /// <summary>One of which nothing is known here.</summary>
    Other,
}

/// <summary>What a vessel catches or holds.</summary>
/// <param name="Name">Name by which the file calls it.</param>
/// <param name="Word">Word by which a sentence names it, without an article: <c>oil</c>.</param>
/// <param name="IsOil">True where its viscosity follows Walther's law (ASTM D341); else it is read between the points by 1 / T.</param>
/// <param name="Points">Two or more by rising temperature: degC, kg/m3, and mm2/s.</param>
/// <param name="Source">Source of the points.</param>
public sealed record Liquid(
    string Name, string Word, bool IsOil, ImmutableArray<(double Celsius, double Density, double Viscosity)> Points, string Source)
{
    /// <summary>What it does to people and metals.</summary>
    public LiquidKind Kind { get; init; } = LiquidKind.Oil;

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
