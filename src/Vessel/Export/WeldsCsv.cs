using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>welds.csv: a row a joint, and the totals in a last one.</summary>
internal static class WeldsCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "number", "weld", "kind", "length_mm", "throat_mm", "leg_min_mm", "leg_max_mm", "angle_min_deg", "angle_max_deg",
        "gap_normal_mm", "gap_axial_mm", "deposit_mm3", "filler", "filler_g", "filler_high_g", "rod_mm", "rods", "rods_high",
        "travel_mm_per_min", "arc_min", "time_low_min", "time_likely_min", "time_high_min", "passes", "preparation", "least_leg_mm",
        "current", "tungsten_mm", "cup", "amps_low", "amps_high", "gas", "gas_l_per_min", "volts_low", "volts_high", "heat_kj_per_mm",
        "shear_n_per_mm", "pull_n_per_mm", "weakest", "purge",
        "free_share", "reached_share", "notes",
    ];

    public static void Write(Build build, Stream to)
    {
        var shop = build.Assembly.Design.Shop.Welding;
        var access = build.Plan.Access.ToDictionary(one => one.Joint.Number);
        Csv.Write(
            to,
            _columns,
            [
                .. build.Welds.Zip(build.Plan.Procedures).Select(weld => Row(weld.First.Figures, weld.First.Cost, shop)
                    .Concat(Procedure(weld.Second, access[weld.Second.Joint.Number])).ToArray()),
                Totals(build.Welds, shop),
            ]);
    }

    private static CsvCell[] Row(WeldFigures figures, WeldCost cost, WeldingShop shop)
    {
        var joint = figures.Joint;
        var time = WeldTotals.Elapsed(cost.ArcMinutes, shop);
        return
        [
            joint.Number, joint.Name, joint.Kind.ToString().ToLowerInvariant(), figures.Length, joint.Throat,
            figures.Leg.Start, figures.Leg.End, Turns.ToDegrees(figures.Dihedral.Start), Turns.ToDegrees(figures.Dihedral.End),
            figures.GapNormal, figures.GapAxial, figures.Deposit, cost.Filler.Name, cost.FillerMass.Likely,
            cost.FillerMass.High, cost.Rod.Diameter, cost.Rods.Likely, cost.Rods.High, cost.Travel.Value, cost.ArcMinutes,
            time.Low, time.Likely, time.High,
        ];
    }

    private static CsvCell[] Procedure(WeldProcedure weld, TorchAccess access) =>
    [
        weld.Passes, weld.Preparation, weld.LeastLeg, weld.Current.Short(), weld.Tungsten?.Diameter, weld.Tungsten?.Cup,
        Math.Round(weld.Settings.Low), Math.Round(weld.Settings.High), weld.Settings.GasName, Math.Round(weld.Settings.Gas, 1),
        Math.Round(weld.Volts.Low, 1), Math.Round(weld.Volts.High, 1), weld.HeatInput.Likely,
        weld.Strength.Shear.Value, weld.Strength.Pull.Value, weld.Strength.Shear.By,
        weld.Purged ? "argon" : null, access.FreeShare, access.ReachedShare, string.Join("; ", weld.Notes),
    ];

    private static CsvCell[] Totals(ImmutableArray<(WeldFigures Figures, WeldCost Cost)> welds, WeldingShop shop)
    {
        var totals = WeldTotals.Of(welds, shop);
        return
        [
            "total", default, default, totals.Length, default, default, default, default, default, default, default,
            welds.Sum(weld => weld.Figures.Deposit), default, totals.FillerMass.Likely, totals.FillerMass.High, default,
            totals.Rods.Likely, totals.Rods.High, default, totals.ArcMinutes,
            totals.JobMinutes.Low, totals.JobMinutes.Likely, totals.JobMinutes.High,
            .. Enumerable.Repeat(default(CsvCell), 20),
        ];
    }
}
