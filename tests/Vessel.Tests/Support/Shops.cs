using Vessel.Stock;

namespace Vessel.Tests.Support;

/// <summary>Shop files.</summary>
internal static class Shops
{
    /// <summary>One with every key, each with a value other than its default.</summary>
    public static string Whole { get; } = $$"""
        shop: Boatyard of the north quay
        units: in
        welding:
          { rod_length: 1000 mm, rod_stub: 50 mm, gap_aim: 0.2, gap_most: 0.4, gap_limit: 0.8 mm, arc_share: 0.25, face_allowance: 0.5 mm, purge_flow: 8, purge_oxygen: 200 }
        torch: { cup_diameter: 16 mm, stick_out: 15 mm }
        rates: { {{string.Join(", ", HandRates.All.Select(rate => FormattableString.Invariant($"{rate.Name}: {1.5 * rate.Likely}")))}} }
        stock: { tube_length: 5 m, bar_length: 2 m, saw_kerf: 2 mm, grip_loss: 100 mm, sheet_length: 2 m, sheet_width: 1 m, sheet_margin: 12 mm, spacing: 8 mm, cut_step: 50 mm, least_cut: 100 mm }
        prices: { currency: EUR, sheet_by: used, length_by: whole, packing_per_kg: 30, spinning: 45, finish: 35, aluminium_per_kg: 6, stainless_per_kg: 5, mild_steel_per_kg: 2, rod_per_kg: 20, gas_per_m3: 12, laser_per_minute: 2, fitting: 15, labour_per_hour: 50,
                  metal_least: 0.01, laser_least: 0.02, margin: 0.2, tax: 0.19, fittings: [{ size: dash 20, price: 18 }], spinnings: [{ up_to: 400 mm, price: 60 }] }
        rolls: { least_diameter: 20 mm, flat_end: 0 mm, ends: trim, seam_shrinkage: 0.3 mm }
        bends: { aluminium: 0.40, stainless: 0.44, mild_steel: 0.42 }
        """;
}
