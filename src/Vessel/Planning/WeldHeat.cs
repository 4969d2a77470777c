using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>How warm a weld leaves its parts by the time that the next joint is fitted up.</summary>
/// <remarks>
/// The arc's heat has spread by r = 2 sqrt(alpha t) to all sides while the weld was laid and the next was fitted up: over a strip of the
/// thinner wall, 2 r wide and r longer than the run at either end that it has, and never over more metal than the parts hold. No heat goes
/// into the air, so that the mean rise of that strip is an upper bound of it. Derived here.
/// </remarks>
internal static class WeldHeat
{
    private const double Shop = 20;

    private const double SecondsPerMinute = 60;

    private const double JoulesPerKilojoule = 1000;

    /// <summary>Mean temperature of the strip, degrees Celsius.</summary>
    /// <param name="heat">Heat of one pass, kJ/mm.</param>
    /// <param name="fitUp">Minutes before the next arc at the least.</param>
    public static double After(WeldFigures weld, Thermal metal, double heat, int passes, double travel, double fitUp, Part host, Part part)
    {
        var joint = weld.Joint;
        var energy = heat * JoulesPerKilojoule * passes * weld.Length;
        var seconds = SecondsPerMinute * ((passes * weld.Length / travel) + fitUp);
        var reach = 2 * Math.Sqrt(metal.Diffusivity * seconds);
        var runs = joint.Welded.Length;
        var isRing = joint.IsRound && joint.Runs.IsEmpty;
        var strip = 2 * reach * joint.Wall * (weld.Length + (isRing ? 0 : 2 * reach * runs));
        var parts = host.Id == part.Id ? host.Volume : host.Volume + part.Volume;
        return Shop + (energy / (metal.Capacity * Math.Min(strip, parts)));
    }
}
