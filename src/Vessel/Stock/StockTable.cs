using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A table of stock as it is shown to the user.</summary>
/// <param name="Name">One word.</param>
/// <param name="Columns">Names with their units, as <c>thickness_mm</c>; the last is always <c>source</c>.</param>
/// <param name="Rows">Each cell is a text, a double, or null where no figure is known.</param>
public sealed record StockTable(
    string Name, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<object?>> Rows)
{
    public static ImmutableArray<StockTable> All { get; } =
    [
        new("sources", ["mark", "document", "source"],
            [.. Sources.All.Select(source => Row(source.Mark, source.Document, source.Publisher))]),
        new("materials", ["material", "density_g_cm3", "filler", "source"],
        [
            .. Materials.All.Select(m => Row(m.Name, m.Density, m.Filler.Name, m.Source)),
        ]),
        new("gauges", ["gauge", "metal", "thickness_mm", "source"],
        [
            .. from gauge in Gauges.Numbers
               from family in Enum.GetValues<MaterialFamily>()
               let thickness = Gauges.Thickness(family, gauge)
               select Row((double)gauge, $"{Word(family)} sheet", thickness.Value, thickness.Source),
            .. Gauges.Numbers.Select(
                gauge => Row((double)gauge, "tube of any metal", Gauges.TubeWall(gauge)!.Value, Gauges.TubeWall(gauge)!.Source)),
        ]),
        new("tubes", ["metal", "outside_diameter_mm", "wall_mm", "source"],
        [
            .. TubeSizes.All.Select(t => Row(t.Metal, t.OutsideDiameter, t.Wall, TubeSizes.Source)),
        ]),
        new("patterns", ["pattern", "hole_diameter_mm", "pitch_mm", "open_percent", "source"],
        [
            .. SheetPatterns.All.Select(p => Row(
                p.Name, p.HoleDiameter, p.Pitch, Math.Round(100 * p.OpenShare, 3), SheetPatterns.Source)),
        ]),
        new("fittings", ["fitting", "thread", "bore_mm", "source"],
        [
            .. Threads.All.Where(t => t.Bore is not null).Select(t => Row(t.Name, t.Thread, t.Bore, t.Source)),
        ]),
        new("threads", ["name", "thread", "major_mm", "tap_drill_mm", "fitting_bore_mm", "source"],
        [
            .. Threads.All.Select(t => Row(t.Name, t.Thread, t.MajorDiameter, t.TapDrill, t.Bore, t.Source)),
        ]),
        new("tolerances", ["process", "up_to_thickness_mm", "up_to_size_mm", "off_mm", "source"],
        [
            .. CuttingTolerances.All.Select(t => Row(t.Process, t.Thickness, t.Size, t.Off, t.Source)),
            .. TubeTolerances.All.Select(t => Row($"bought {Word(t.Family)} tube, outside", null, t.To, t.Off, t.Source)),
            .. SheetTolerances.All.Select(t => Row("sheet's thickness", t.Below, null, t.Off, SheetTolerances.Source)),
        ]),
        new("fillers", ["filler", "density_g_cm3", "source"],
        [
            .. Fillers.All.Select(f => Row(f.Name, f.Density, f.Source)),
        ]),
        new("rods", ["rod", "diameter_mm", "length_mm", "source"],
        [
            .. Rods.All.Select(r => Row(r.Name, r.Diameter, r.Length, Rods.Source)),
        ]),
        new("strengths",
            ["material", "elasticity_mpa", "poisson", "growth_um_m_k", "yield_as_welded_mpa", "tensile_as_welded_mpa", "source"],
        [
            .. Strengths.All.Select(s => Row(
                s.Material, s.Elasticity, s.Poisson, Math.Round(s.Growth * 1e6, 3), Math.Round(s.Yield, 2), Math.Round(s.Tensile, 2),
                s.Source)),
        ]),
        new("allowable", ["metal", "shear_mpa", "tension_mpa", "source"],
        [
            .. Strengths.All.Select(s => Materials.Find(s.Material)!).Select(metal => Row(
                metal.Name, Math.Round(BaseMetalStrength.Shear(metal).Value, 1), Math.Round(BaseMetalStrength.Pull(metal).Value, 1),
                BaseMetalStrength.Shear(metal).Source)),
            .. Fillers.All.Select(filler => Row(
                filler.Name, Math.Round(WeldMetalStrength.Shear(filler).Value, 1), Math.Round(WeldMetalStrength.Pull(filler).Value, 1),
                WeldMetalStrength.Shear(filler).Source)),
        ]),
        new("duties", ["duty", "acceleration_g", "where", "source"],
        [
            .. MountDuties.All.Select(d => Row(d.Name, d.Acceleration, d.Where, d.Source)),
        ]),
        new("liquids", ["liquid", "temperature_c", "density_kg_m3", "viscosity_mm2_s", "source"],
        [
            .. from liquid in Liquids.All
               from point in liquid.Points
               select Row(liquid.Name, point.Celsius, Math.Round(point.Density, 2), point.Viscosity, liquid.Source),
        ]),
        new("rules", ["rule", "displacement_up_to_l", "volume_l", "source"],
        [
            .. from rule in CatchRules.All
               from step in rule.Steps
               select Row(rule.Name, double.IsFinite(step.UpTo) ? step.UpTo : null, step.Volume, rule.Source),
        ]),
        new("travel", ["metal", "seam", "wall_mm", "speed_mm_min", "source"],
        [
            .. from family in Enum.GetValues<MaterialFamily>()
               from form in Enum.GetValues<SeamForm>()
               from row in TigTables.Rows(family, form)
               select Row(Word(family), form.ToString().ToLowerInvariant(), row.Wall, row.Travel.Value, row.Travel.Source),
        ]),
    ];

    private static ImmutableArray<object?> Row(params ImmutableArray<object?> cells) => cells;

    private static string Word(MaterialFamily family) => family switch
    {
        MaterialFamily.MildSteel => "mild steel",
        _ => family.ToString().ToLowerInvariant(),
    };
}
