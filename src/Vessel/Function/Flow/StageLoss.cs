using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>What a stage takes from the pressure, Pa, with its bounds.</summary>
/// <remarks>
/// Edges: between a wide way A1, the stage A0 and a wide way A2 a thin sharp edge has, on the velocity in A0,
/// zeta = (0.707 (1 - A0/A1)^0.375 + 1 - A0/A2)^2; where the metal is as deep as the opening is wide the jet lies on again:
/// zeta = 0.5 (1 - A0/A1)^0.75 + (1 - A0/A2)^2 (Idelchik). Between the two by depth over diameter, here.
/// Friction: 32 mu v L / D^2 laminar, Blasius beyond, whichever is greater; along a hose the turbulent one by <see cref="Haaland"/>. Small
/// holes at low speed add the creeping loss at their edges: 3 mu Q / r^3 a hole (Sampson). Turn: 2 (1 to 4) times the dynamic pressure.
/// Wool: Davies 1953.
/// </remarks>
internal static class StageLoss
{
    public const string Source =
        "edges: Idelchik, Handbook of Hydraulic Resistance, diagrams 4-1, 4-9, 4-11 (thin edge, thick edge); friction: Hagen-Poiseuille, "
        + "Blasius, of a hose Haaland 1983 (smooth; 0.01 mm rough; 0.1 mm [practice]); creeping at small holes: Sampson; wool: Davies "
        + "1953; turns: 1 to 4 dynamic pressures, not checked against the source; mitres: Kirchbach and Schubart 1929, not checked against "
        + "the source";

    public const string Range =
        "measured for turbulent flow (Re above 1e4 to 1e5) through single edges far apart; gas below 100 m/s; dry media: oil in them adds";

    /// <param name="before">Area of the stage before, mm2; infinite from the open.</param>
    /// <param name="after">Area of the stage behind, mm2; infinite to the open.</param>
    /// <param name="flow">m3/s.</param>
    public static Amount Of(FlowStage stage, double before, double after, double flow, MovingGas gas)
    {
        if (flow <= 0)
            return 0;
        var v = stage.Velocity(flow);
        var dynamic = gas.Density * v * v / 2;
        var (thick, thin) = (Thick(stage.Area / before, stage.Area / after), Thin(stage.Area / before, stage.Area / after));
        var friction = Friction(stage, v, gas);
        switch (stage.Kind)
        {
            case StageKind.Opening:
                var shape = Math.Clamp(1 - (stage.Length / stage.HydraulicDiameter), 0, 1);
                var creeping = Creeping(stage, v, gas);
                var low = Math.Min(thick, thin);
                return new(
                    low * dynamic,
                    ((low + (shape * (thin - low))) * dynamic) + friction + creeping,
                    (Math.Max(thick, thin) * dynamic) + friction + creeping);
            case StageKind.Turn:
                return new(dynamic, 2 * dynamic, 4 * dynamic);
            case StageKind.Bend:
                return (dynamic * stage.BendLoss) + (thick * dynamic);
            case StageKind.Packing:
                return Wool(stage, v, gas);
            case StageKind.Hose:
                return (thick * dynamic)
                    + new Amount(Along(stage, v, gas, 0), Along(stage, v, gas, LikelyRough), Along(stage, v, gas, MostRough));
            default:
                return new((thick * dynamic) + friction, (thick * dynamic) + friction, (thick * dynamic) + (1.5 * friction));
        }
    }

    /// <summary>Loss of a thin opening, reckoned on the velocity in it.</summary>
    public static double Thin(double toBefore, double toAfter)
    {
        var sum = (0.707 * Math.Pow(Past(toBefore), 0.375)) + Past(toAfter);
        return sum * sum;
    }

    /// <summary>Loss of a thick opening, reckoned on the velocity in it.</summary>
    public static double Thick(double toBefore, double toAfter) =>
        (0.5 * Math.Pow(Past(toBefore), 0.75)) + (Past(toAfter) * Past(toAfter));

    /// <summary>Pressure loss of a packing, by Davies: Pa = 64 a^1.5 (1 + 56 a^3) mu v L / d^2 at a share a of fibre.</summary>
    public static double Davies(double share, double viscosity, double velocity, double length, double fibre) =>
        64 * Math.Pow(share, 1.5) * (1 + (56 * Math.Pow(share, 3))) * viscosity * velocity * length / (fibre * fibre);

    /// <summary>Share of a packing that is fibre; null where its metal or its fibre is not known, or it is none.</summary>
    public static double? FibreShare(PackingDesign packing) => packing is { Family: { } family, FibreDiameter: > 0 }
        && packing.Density / (1000 * Materials.All.First(m => m.Family == family).Density) is var share and > 0 and < 0.5
            ? share
            : null;

    private static double Past(double ratio) => Math.Max(0, 1 - ratio);

    private static double Friction(FlowStage stage, double v, MovingGas gas)
    {
        var (length, d) = (stage.Length * 1e-3, stage.HydraulicDiameter * 1e-3);
        var reynolds = v * d * gas.Density / gas.Viscosity;
        return Math.Max(
            32 * gas.Viscosity * v * length / (d * d),
            0.3164 / Math.Pow(reynolds, 0.25) * length / d * gas.Density * v * v / 2);
    }

    /// <summary>Creeping loss through round holes of the stage's hydraulic diameter, Pa: 3 mu Q / r^3 is 3 pi mu v / r.</summary>
    private static double Creeping(FlowStage stage, double v, MovingGas gas) =>
        3 * Math.PI * gas.Viscosity * v / (stage.HydraulicDiameter * 1e-3 / 2);

    /// <summary>Roughness of a hose inside, mm. Common practice, no source.</summary>
    private const double LikelyRough = 0.01;

    private const double MostRough = 0.1;

    /// <summary>
    /// Friction factor of turbulent flow in a round bore, on the diameter (Darcy), by Haaland 1983: 1 / sqrt f = -1.8 lg((e / 3.7)^1.11 +
    /// 6.9 / Re); within 2 % of Colebrook and White's from Re 4000 to 1e8.
    /// </summary>
    /// <param name="roughness">Over the bore.</param>
    public static double Haaland(double reynolds, double roughness) =>
        Math.Pow(-1.8 * Math.Log10(Math.Pow(roughness / 3.7, 1.11) + (6.9 / reynolds)), -2);

    private static double Along(FlowStage stage, double v, MovingGas gas, double roughness)
    {
        var (length, d) = (stage.Length * 1e-3, stage.HydraulicDiameter * 1e-3);
        var reynolds = v * d * gas.Density / gas.Viscosity;
        // Haaland's form means nothing where it is not turbulent, and has no root near Re 7.
        var factor = Math.Max(64 / reynolds, reynolds > LeastTurbulent ? Haaland(reynolds, roughness / stage.HydraulicDiameter) : 0);
        return factor * length / d * gas.Density * v * v / 2;
    }

    /// <summary>Below this Reynolds number flow in a round bore is laminar.</summary>
    private const double LeastTurbulent = 2300;

    private static Amount Wool(FlowStage stage, double v, MovingGas gas)
    {
        if (FibreShare(stage.Packing!) is not { } share)
            return 0;
        var dry = Davies(share, gas.Viscosity, v, stage.Length * 1e-3, stage.Packing!.FibreDiameter!.Value * 1e-3);
        return new(dry / 2, dry, 3 * dry);
    }
}
