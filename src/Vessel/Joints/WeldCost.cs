using System.Globalization;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>Rod and time of one weld.</summary>
/// <param name="FillerMass">Metal that ends in the weld over the share of melted rod that does, grams.</param>
/// <param name="Rods">Whole rods' worth, stubs thrown away included.</param>
/// <param name="ArcMinutes">Path over travel speed, for each pass.</param>
/// <param name="FillerWhy">Where what the vessel has to stand decided the filler; else null.</param>
/// <param name="Travel">The speed taken, mm/min, with its source.</param>
public sealed record WeldCost(
    Filler Filler, string? FillerWhy, Rod Rod, Estimate FillerMass, Estimate Rods, double ArcMinutes, Datum Travel)
{
    /// <summary>
    /// Convexity 0.1 of the leg adds 19 % to a flat fillet (derived), which the high values take, and the gap; the low ones
    /// are the flat section itself.
    /// </summary>
    private const double ConvexityShare = 0.189;

    public static WeldCost Of(WeldFigures weld, JointMetals metals, VesselDesign design)
    {
        var shop = design.Shop.Welding;
        var (filler, why) = (metals.Filler, metals.FillerWhy);
        var rod = Stock.Rods.RecommendedFor(weld.Joint.Wall) with { Length = shop.RodLength };
        var travel = TigTables.Travel(
            metals.Host.Family, weld.Joint.Kind == JointKind.Fillet ? SeamForm.Fillet : SeamForm.Butt, weld.Joint.Wall);
        var passes = WeldPasses.Of(weld);
        var likely = weld.Deposit * filler.Density / 1000 / Stock.Rods.DepositEfficiency.Value;
        var basis = string.Create(
            CultureInfo.InvariantCulture,
            $"{Stock.Rods.DepositEfficiency.Value:P0} of the melted rod stays, {shop.StubShare:P0} of a rod is stub");
        var high = (likely * (1 + ConvexityShare)) + (GapMetal(weld) * filler.Density / 1000 / Stock.Rods.DepositEfficiency.Value);
        var rods = 1 / (rod.Mass(filler) * (1 - shop.StubShare));
        return new(
            filler,
            why,
            rod,
            new(likely, likely, high, $"flat face to a convexity of a tenth of the leg and the gap filled; {basis}"),
            new(rods * likely, rods * likely, rods * high, $"{rod.Name}; {basis}"),
            passes * weld.Length / travel.Value,
            travel);
    }

    /// <summary>What a fillet's root gap may swallow, mm3: the gap through the wall. In a butt it is in the deposit.</summary>
    private static double GapMetal(WeldFigures weld) => weld.Joint.Kind == JointKind.Fillet
        ? weld.Stations.Average(station => station.At.GapNormal) * weld.Joint.Wall * weld.Length
        : 0;
}
