using System.Globalization;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>Rod and time of one weld.</summary>
/// <param name="FillerMass">Metal that ends in the weld over the share of melted rod that does, grams.</param>
/// <param name="Rods">Whole rods' worth, stubs thrown away included.</param>
/// <param name="ArcMinutes">Path over travel speed.</param>
/// <param name="Travel">The speed taken, mm/min, with its source.</param>
public sealed record WeldCost(Filler Filler, Rod Rod, Estimate FillerMass, Estimate Rods, double ArcMinutes, Datum Travel)
{
    /// <summary>
    /// Convexity 0.1 of the leg adds 19 % to a flat fillet (derived), which is where the high values lie; the low ones are
    /// the flat section itself.
    /// </summary>
    private const double ConvexityShare = 0.189;

    public static WeldCost Of(WeldFigures weld, Material host, Material part, WeldingShop shop)
    {
        var filler = Fillers.Between(host, part)
            ?? throw new ArgumentException($"no filler joins {host.Name} to {part.Name}");
        var rod = Stock.Rods.RecommendedFor(weld.Joint.Wall) with { Length = shop.RodLength };
        var travel = TigTables.Travel(
            host.Family, weld.Joint.Kind == JointKind.Fillet ? SeamForm.Fillet : SeamForm.Butt, weld.Joint.Wall);
        var likely = weld.Deposit * filler.Density / 1000 / Stock.Rods.DepositEfficiency.Value;
        var basis = string.Create(
            CultureInfo.InvariantCulture,
            $"{Stock.Rods.DepositEfficiency.Value:P0} of the melted rod stays, {shop.StubShare:P0} of a rod is stub");
        return new(
            filler,
            rod,
            Range(likely, $"flat face to a convexity of a tenth of the leg; {basis}"),
            Range(likely / (rod.Mass(filler) * (1 - shop.StubShare)), $"{rod.Name}; {basis}"),
            weld.Length / travel.Value,
            travel);
    }

    private static Estimate Range(double likely, string basis) =>
        new(likely, likely, likely * (1 + ConvexityShare), basis);
}
