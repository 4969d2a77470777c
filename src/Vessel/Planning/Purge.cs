using Vessel.Function;

namespace Vessel.Planning;

/// <summary>Filling the closed vessel with argon before a root is welded.</summary>
/// <remarks>
/// Perfect mixing: after n changes of the volume the oxygen is 209500 exp(-n) ppm, so n = ln(209500 / ppm). Filling from
/// below takes less; dead corners take more.
/// </remarks>
/// <param name="Volume">L.</param>
/// <param name="Flow">L/min.</param>
/// <param name="Changes">Number of changes of the volume.</param>
public sealed record Purge(double Volume, double Flow, double Changes)
{
    private const double OxygenOfAir = 209_500;

    private const double CubicMillimetresPerLitre = 1e6;

    /// <param name="oxygen">What may be left, ppm.</param>
    public static Purge Of(double volume, double flow, double oxygen) => new(volume, flow, Math.Max(0, Math.Log(OxygenOfAir / oxygen)));

    public static Purge Of(Assembly assembly)
    {
        var shop = assembly.Design.Shop.Welding;
        return Of(assembly.Capacity.Brim / CubicMillimetresPerLitre, shop.PurgeFlow, shop.PurgeOxygen);
    }

    public double Gas => Changes * Volume;

    public double Minutes => Gas / Flow;
}
