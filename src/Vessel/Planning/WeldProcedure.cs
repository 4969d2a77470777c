using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>How one weld is laid by hand with TIG. A start for a trial on scrap; no qualified procedure.</summary>
/// <param name="Preparation">Of the edges, in words with the gap.</param>
/// <param name="LeastLeg">Published least leg, mm; null where none is published for the metal and wall.</param>
/// <param name="FillerMass">Grams.</param>
/// <param name="Settings">Amps and gas, with their source.</param>
/// <param name="Volts">At the middle of the amps.</param>
/// <param name="HeatInput">kJ/mm of each pass, by the low, middle and high amps.</param>
/// <param name="Strength">What a millimetre of the weld may carry in shear on its throat, N/mm, with its basis.</param>
/// <param name="Purged">Whether the root side is flooded with argon.</param>
/// <param name="Notes">Preheat, interpass, distortion: one line each.</param>
public sealed record WeldProcedure(
    WeldFigures Weld,
    WeldRole Role,
    string Preparation,
    double? LeastLeg,
    int Passes,
    Filler Filler,
    Estimate FillerMass,
    Rod Rod,
    Tungsten Tungsten,
    TigRow Settings,
    double Volts,
    Datum Travel,
    Estimate HeatInput,
    Datum Strength,
    bool Purged,
    ImmutableArray<string> Notes)
{
    public Joint Joint => Weld.Joint;

    /// <summary>Middle of the table's amps.</summary>
    public double Amps => (Settings.Low + Settings.High) / 2;

    public static WeldProcedure Of(WeldFigures weld, Part host, Part part, VesselDesign design)
    {
        var joint = weld.Joint;
        var role = WeldRoles.Of(joint, design);
        var cost = WeldCost.Of(weld, host.Material, part.Material, design);
        var family = host.Material.Family;
        var form = joint.Kind == JointKind.Fillet ? SeamForm.Fillet : SeamForm.Butt;
        var settings = TigSettings.At(family, form, joint.Wall);
        var amps = (settings.Low + settings.High) / 2;
        var stress = ThroatStrength.Of(cost.Filler);
        return new(
            weld,
            role,
            WeldPreparation.Of(weld, design.Shop.Welding.GapAim),
            LeastFillet.Leg(family, Math.Min(host.Thickness, part.Thickness), Math.Max(host.Thickness, part.Thickness)),
            WeldPasses.Of(weld),
            cost.Filler,
            cost.FillerMass,
            cost.Rod,
            Tungstens.For(amps, family == MaterialFamily.Aluminium),
            settings,
            ArcHeat.Volts(amps),
            cost.Travel,
            new(
                ArcHeat.Input(settings.Low, cost.Travel.Value),
                ArcHeat.Input(amps, cost.Travel.Value),
                ArcHeat.Input(settings.High, cost.Travel.Value),
                ArcHeat.Source),
            new(stress.Value * joint.Throat, stress.Source),
            family == MaterialFamily.Stainless && role.IsWall(),
            [.. cost.FillerWhy is { } why ? new[] { why } : [], WeldNotes.Heat(family, joint.Wall), WeldNotes.Distortion(role)]);
    }
}
