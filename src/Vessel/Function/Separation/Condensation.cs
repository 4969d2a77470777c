using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>How far gas cools in the vessel, and how much water that can leave there. Bounds, no more.</summary>
/// <remarks>
/// A stream along a wall of area A towards air at Ta: Tout = Ta + (T - Ta) exp(-U A / (rho Q cp)), as if the wall had one
/// temperature of the air round it. Water: vapour of the pressure e in the gas, what is above saturation at Tout falls out.
/// </remarks>
public static class Condensation
{
    public const string Source =
        "one-stream exchanger; U 3 to 12 W/(m2 K) for still air outside and slow gas inside [practice]; saturation: Magnus form "
        + "of Alduchov and Eskridge 1996; vapour at most 13 % of burnt gas (not checked against the source), 5 % likely [practice]";

    /// <summary>Through gas, wall and air together, W/(m2 K).</summary>
    public static Amount Transfer { get; } = new(3, 6, 12);

    /// <summary>Share of vapour in the gas: none; blow-by thinned by air; burnt gas alone.</summary>
    public static Amount Vapour { get; } = new(0, 0.05, 0.13);

    private const double WaterConstant = 461.5;

    /// <summary>Outside of shell and heads, m2.</summary>
    public static double Wall(VesselDesign design)
    {
        double Head(VesselEnd end) => HeadShape.Of(end, design) is { } shape ? shape.Outer.Area * 1e-6
            : design.Shell.AtEnd(end).OuterRadius * 1e-3 is var r ? Math.PI * r * r : 0;
        return (design.Shell.OutsideArea * 1e-6) + Head(VesselEnd.Top) + Head(VesselEnd.Bottom);
    }

    /// <summary>degC at the vent.</summary>
    public static double Leaves(double enters, double air, double transfer, double wall, double flow, double density) =>
        air + ((enters - air) * Math.Exp(-transfer * wall / (density * flow * Air.Heat)));

    /// <summary>degC at the vent, by the bounds of heat transfer and flow.</summary>
    public static Amount LeavesAt(FlowPath path, VesselDesign design)
    {
        var flow = path.Gas.Flow!.Value;
        var (a, b) = (LeavesAt(path, design, Transfer.High, flow.Low), LeavesAt(path, design, Transfer.Low, flow.High));
        return new(Math.Min(a, b), LeavesAt(path, design, Transfer.Likely, flow.Likely), Math.Max(a, b));
    }

    /// <summary>g/h that may fall out; null without a flow, where the gas does not cool, and beyond what the formulas are for.</summary>
    public static Amount? WaterLeft(FlowPath path, VesselDesign design)
    {
        var given = design.Flow;
        if (path.Gas.Flow is not { Low: > 0 } flow || LeavesAt(path, design) is var leaves && (
            leaves.Likely >= given.Temperature || given.Temperature is < 0 or > 100 || leaves.Low < -40))
        {
            return null;
        }

        double Falls(double vapour, double to, double q) => Water(vapour, Air.Atmosphere + given.Pressure, given.Temperature, to, q);
        return new(
            0,
            Falls(Vapour.Likely, leaves.Likely, flow.Likely),
            // More gas brings more water but cools less: the greater of both ends.
            Math.Max(
                Falls(Vapour.High, LeavesAt(path, design, Transfer.High, flow.High), flow.High),
                Falls(Vapour.High, LeavesAt(path, design, Transfer.High, flow.Likely), flow.Likely)));
    }

    private static double LeavesAt(FlowPath path, VesselDesign design, double transfer, double flow) =>
        Leaves(design.Flow.Temperature, design.Flow.Surroundings, transfer, Wall(design), flow, path.Gas.Density);

    /// <summary>Pa, over water; -40 to 50 degC, 1.3 % too high at 80.</summary>
    public static double Saturation(double celsius) => 610.94 * Math.Exp(17.625 * celsius / (celsius + 243.04));

    /// <summary>g/h.</summary>
    public static double Water(double vapour, double pressure, double enters, double leaves, double flow)
    {
        var held = Math.Min(vapour * pressure, Saturation(enters));
        var over = Math.Max(0, held - Saturation(leaves));
        return over / (WaterConstant * Air.Kelvin(enters)) * flow * 3600 * 1000;
    }
}
