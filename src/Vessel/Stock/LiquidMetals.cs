namespace Vessel.Stock;

/// <summary>What liquids do to metals.</summary>
public static class LiquidMetals
{
    private const string Chlorides = "crevice corrosion is rare only below 200 mg/L of chloride for 304 and 1000 mg/L for 316 (BSSA, OG 2.2)";

    /// <summary>What a liquid does to a metal, with its source, to stand after "the ..."; null where nothing is to be said.</summary>
    public static (bool IsGrave, string Words)? Of(LiquidKind liquid, Material metal) => (liquid, metal.Family) switch
    {
        (LiquidKind.Water, MaterialFamily.MildSteel) => (false, $"rusts in water: coat it inside, or take stainless {Sources.Practice}"),
        (LiquidKind.Water, MaterialFamily.Aluminium) => (false, $"pits where the water is hard or has passed through copper {Sources.Practice}"),
        (LiquidKind.Coolant, MaterialFamily.MildSteel or MaterialFamily.Aluminium) =>
            (false, $"lasts only while the coolant's inhibitor does: change it when its maker says {Sources.Practice}"),
        (LiquidKind.Brine, MaterialFamily.MildSteel) => (true, $"rusts through in brine: take plastic {Sources.Practice}"),
        (LiquidKind.Brine, MaterialFamily.Aluminium) => (true, $"pits through in brine: take plastic {Sources.Practice}"),
        (LiquidKind.Brine, MaterialFamily.Stainless) => (true, $"pits in crevices and under dirt: {Chlorides}, and brine holds a hundred times that"),
        (LiquidKind.Petrol, MaterialFamily.MildSteel) =>
            (false, "rusts where water settles under petrol: on boats iron or steel under 3/16 in is hot-dip galvanised inside and out "
                + "(46 CFR 58.50-5)"),
        (LiquidKind.Petrol, MaterialFamily.Stainless) =>
            (false, "is none of the metals that 46 CFR 58.50-5 names for petrol tanks of commercial craft: ask which rule holds"),
        _ => null,
    };
}
