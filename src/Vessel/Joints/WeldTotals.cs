using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>All welds of a vessel together.</summary>
/// <param name="Length">mm.</param>
/// <param name="FillerMass">grams.</param>
/// <param name="JobMinutes">Elapsed welding time: arc time over the share of it that the arc burns. Fitting, cutting and
/// cleaning are not in it.</param>
public sealed record WeldTotals(double Length, Estimate FillerMass, Estimate Rods, double ArcMinutes, Estimate JobMinutes)
{
    public static WeldTotals Of(ImmutableArray<(WeldFigures Figures, WeldCost Cost)> welds, WeldingShop shop)
    {
        var arc = welds.Sum(weld => weld.Cost.ArcMinutes);
        return new(
            welds.Sum(weld => weld.Figures.Length),
            Sum(welds.Select(weld => weld.Cost.FillerMass)),
            Sum(welds.Select(weld => weld.Cost.Rods)),
            arc,
            Elapsed(arc, shop));
    }

    /// <summary>Minutes at the bench for minutes of arc.</summary>
    public static Estimate Elapsed(double arcMinutes, WeldingShop shop)
    {
        var share = shop.ArcShare;
        return new(
            arcMinutes / share.High,
            arcMinutes / share.Likely,
            arcMinutes / share.Low,
            string.Create(CultureInfo.InvariantCulture, $"arc time over an arc share of {share.Low} to {share.High}: {share.Basis}"));
    }

    private static Estimate Sum(IEnumerable<Estimate> estimates)
    {
        var all = estimates.ToList();
        return new(all.Sum(e => e.Low), all.Sum(e => e.Likely), all.Sum(e => e.High), all.Count > 0 ? all[0].Basis : "no weld");
    }
}
