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

    private static readonly string _basis = string.Create(
        CultureInfo.InvariantCulture,
        $"{Stock.Rods.DepositEfficiency.Value:P0} of the melted rod stays, {Stock.Rods.StubLoss.Value:P0} of a rod is stub");

    public static WeldCost Of(WeldFigures weld, Material host, Material part)
    {
        var filler = Fillers.Between(host, part)
            ?? throw new ArgumentException($"no filler joins {host.Name} to {part.Name}");
        var rod = Stock.Rods.RecommendedFor(weld.Joint.Wall);
        var travel = TigTables.Travel(
            host.Family, weld.Joint.Kind == JointKind.Fillet ? SeamForm.Fillet : SeamForm.Butt, weld.Joint.Wall);
        var likely = weld.Deposit * filler.Density / 1000 / Stock.Rods.DepositEfficiency.Value;
        return new(
            filler,
            rod,
            Range(likely, $"flat face to a convexity of a tenth of the leg; {_basis}"),
            Range(likely / (rod.Mass(filler) * (1 - Stock.Rods.StubLoss.Value)), $"{rod.Name}; {_basis}"),
            weld.Length / travel.Value,
            travel);
    }

    private static Estimate Range(double likely, string basis) =>
        new(likely, likely, likely * (1 + ConvexityShare), basis);
}
