using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>How one weld is laid by hand with TIG. A start for a trial on scrap; no qualified procedure.</summary>
/// <param name="Preparation">Preparation of the edges, in words with the gap.</param>
/// <param name="LeastLeg">Published least leg, mm; null where none is published for the metal and wall.</param>
/// <param name="FillerMass">Grams.</param>
/// <param name="Current">Alternating, or direct with the electrode negative.</param>
/// <param name="Tungsten">Null where no electrode of the table carries the amps.</param>
/// <param name="Settings">Amps and gas, with their source.</param>
/// <param name="Volts">Voltage of the arc, by the low and the high amps.</param>
/// <param name="HeatInput">kJ/mm of each pass, by the low, middle and high amps.</param>
/// <param name="Strength">What a millimetre of the weld may carry.</param>
/// <param name="Purged">Whether the root side is flooded with argon.</param>
/// <param name="CoolBelow">Temperature below which it has to be before the next, degrees Celsius; null where it is by then.</param>
/// <param name="Notes">Preheat, interpass, distortion: one line each.</param>
public sealed record WeldProcedure(
    WeldFigures Weld,
    string Preparation,
    double? LeastLeg,
    int Passes,
    Filler Filler,
    Estimate FillerMass,
    Rod Rod,
    WeldingCurrent Current,
    Tungsten? Tungsten,
    TigRow Settings,
    (double Low, double High) Volts,
    Datum Travel,
    Estimate HeatInput,
    WeldStrength Strength,
    bool Purged,
    double? CoolBelow,
    ImmutableArray<string> Notes)
{
    public Joint Joint => Weld.Joint;

    public WeldRole Role => Joint.Role;

    /// <summary>Middle of the table's amps.</summary>
    public double Amps => (Settings.Low + Settings.High) / 2;

    public static WeldProcedure Of(WeldFigures weld, JointMetals metals, Part host, Part part, VesselDesign design)
    {
        var joint = weld.Joint;
        var cost = WeldCost.Of(weld, metals, design);
        var family = metals.Host.Family;
        var form = joint.Kind == JointKind.Fillet ? SeamForm.Fillet : SeamForm.Butt;
        var (settings, current) = (TigSettings.At(family, form, joint.Wall), WeldingCurrents.Of(family));
        var volts = (Low: ArcHeat.Volts(settings.Low, current).Low, High: ArcHeat.Volts(settings.High, current).High);
        var (amps, passes) = ((settings.Low + settings.High) / 2, WeldPasses.Of(weld));
        var heat = new Estimate(
            ArcHeat.Input(volts.Low, settings.Low, cost.Travel.Value),
            ArcHeat.Input((volts.Low + volts.High) / 2, amps, cost.Travel.Value),
            ArcHeat.Input(volts.High, settings.High, cost.Travel.Value),
            ArcHeat.Source(current));
        var (coolBelow, fitUp) = (WeldNotes.CoolBelow(family, joint.Wall), design.Shop.Rates[HandRates.FitUp.Name].Low);
        var after = WeldHeat.After(weld, Thermal.Of(family), heat.Likely, passes, cost.Travel.Value, fitUp, host, part);
        return new(
            weld,
            WeldPreparation.Of(weld, RootGap.Aim(joint.Wall, design.Shop.Welding)),
            LeastFillet.Leg(family, Math.Min(host.Thickness, part.Thickness)),
            passes,
            cost.Filler,
            cost.FillerMass,
            cost.Rod,
            current,
            Tungstens.For(settings.Low, settings.High, current),
            settings,
            volts,
            cost.Travel,
            heat,
            metals.StrengthOf(joint),
            family == MaterialFamily.Stainless && joint.Role.IsWall(),
            after > coolBelow ? coolBelow : null,
            [
                .. new[] { cost.FillerWhy, WeldNotes.Heat(family, joint.Wall), WeldNotes.Machine(settings), joint.Words?.Heed
                    ?? WeldNotes.Distortion(joint.Role) }.OfType<string>(),
            ]);
    }
}
