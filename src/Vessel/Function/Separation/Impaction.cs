namespace Vessel.Function;

/// <summary>Drops that strike fibres or walls because they cannot follow the gas; SI units.</summary>
/// <remarks>
/// Stokes number St = rho_p d^2 v / (18 mu D). A fibre across slow gas catches by its reach and inertia as Lee and Liu, and
/// Stechkina and others 1969, work out for creeping flow (share a of fibre, R = d / D, Ku = -ln a / 2 - 3/4 + a - a^2 / 4):
/// E = (2 (1 + R) ln(1 + R) - (1 + R) + 1 / (1 + R)) / (2 Ku) + J St / (4 Ku^2), J = (29.6 - 28 a^0.62) R^2 - 27.5 R^2.8, at
/// most 2. Across fast gas (fibre Re about 10) Landahl and Herrmann 1949 measured S^3 / (S^3 + 0.77 S^2 + 0.22), S = 2 St;
/// the reach adds (1 + R) - 1 / (1 + R). All three from memory. Between Re 0.2 and 10 the likely value is taken between both
/// by the logarithm of Re, here: no published law covers wool there.
/// </remarks>
public static class Impaction
{
    public const string FibreSource =
        "creeping flow: Lee and Liu, Stechkina and others 1969; inertia: Landahl and Herrmann 1949; pad: Carpenter and Othmer 1955; all from "
        + "memory; the likely value between them by the logarithm of the fibre's Reynolds number, derived here";

    public const string FibreRange =
        "drops above 0.5 um, fibre share 0.005 to 0.1, all fibres across the gas, dry and even; the two laws hold for fibre Re below 0.2 and near 10";

    public const string JetSource = "round-jet impactors: root of St (on the jet's radius) = 0.49 at half caught, Marple and Willeke 1976 (not checked against the source)";

    public const string JetRange = "jet Re 500 to 3000, wall 1 to 5 jet diameters away and square to the jet";

    /// <summary>Share of the wires of a pad that lie across the gas.</summary>
    private const double AcrossShare = 2.0 / 3;

    private const double CreepingReynolds = 0.2;

    private const double InertiaReynolds = 10;

    /// <summary>On the diameter of what is struck.</summary>
    public static double Stokes(double diameter, double across, double speed, double oilDensity, MovingGas gas) =>
        oilDensity * diameter * diameter * speed / (18 * gas.Viscosity * across);

    /// <summary>Surface of fibres in a volume, 1/m.</summary>
    public static double FibreSurface(double share, double fibre) => 4 * share / fibre;

    /// <summary>Share of the drops of a size that a pad catches.</summary>
    /// <param name="length">Along the gas, m.</param>
    public static Amount Pad(double diameter, double share, double fibre, double length, double speed, double oilDensity, MovingGas gas)
    {
        var depth = FibreSurface(share, fibre) * length / Math.PI;
        var (creeping, inertia) = (Creeping(diameter, share, fibre, speed, oilDensity, gas), Inertia(diameter, fibre, speed, oilDensity, gas));
        var reach = Reach(diameter / fibre);
        var reynolds = speed * fibre * gas.Density / gas.Viscosity;
        var part = Math.Clamp(Math.Log(reynolds / CreepingReynolds) / Math.Log(InertiaReynolds / CreepingReynolds), 0, 1);
        var (least, most) = (Math.Min(creeping, inertia), Math.Min(1 + (diameter / fibre), Math.Max(creeping, inertia + reach)));
        var likely = Math.Pow(creeping, 1 - part) * Math.Pow(Math.Min(most, inertia), part);
        return new(
            Caught(AcrossShare * depth * least), Caught(AcrossShare * depth * Math.Clamp(likely, least, most)), Caught(depth * most));
    }

    /// <summary>By the measured curve for fibres across fast gas.</summary>
    public static double Inertia(double diameter, double fibre, double speed, double oilDensity, MovingGas gas)
    {
        var s = 2 * Stokes(diameter, fibre, speed, oilDensity, gas);
        return s * s * s / ((s * s * s) + (0.77 * s * s) + 0.22);
    }

    /// <summary>m: what a round jet of a diameter throws half of on a wall across it.</summary>
    public static double JetCut(double jet, double speed, double oilDensity, MovingGas gas) =>
        // On the radius St is twice that on the diameter: 0.49^2 = rho d^2 v / (9 mu D).
        0.49 * Math.Sqrt(9 * gas.Viscosity * jet / (oilDensity * speed));

    public const string EdgeSource =
        "bounds derived here: in a turn a drop drifts outward by the angle times its stopping distance, whatever the turn's radius (the plug-flow law "
        + "of bends, Crane and Evans 1977, not checked against the source); at an opening it leaves its thread of gas by no more than its stopping distance";

    public const string EdgeRange = "an upper bound alone: the gas turns by 180 degrees at most, Stokes drag; no published correlation covers screens in series";

    /// <summary>m: how far a drop flies on when the gas stops, by Stokes' drag.</summary>
    public static double StoppingDistance(double diameter, double speed, double oilDensity, MovingGas gas) =>
        oilDensity * diameter * diameter * speed / (18 * gas.Viscosity);

    /// <summary>Greatest share that a turn by 180 degrees in a gap throws on its outer wall: pi times the stopping distance over the gap.</summary>
    /// <param name="gap">m.</param>
    public static double TurnAtMost(double stop, double gap) => Math.Min(1, Math.PI * stop / gap);

    /// <summary>
    /// Greatest share that the metal round an opening catches: of the gas in a ring along its edge as wide as the stopping distance and half
    /// a drop, and never more than flies straight at the metal, unless a drop is wider than the opening.
    /// </summary>
    /// <param name="width">Hydraulic diameter of one opening, m.</param>
    /// <param name="open">Open share of the section before it.</param>
    public static double OpeningAtMost(double stop, double diameter, double width, double open)
    {
        if (diameter >= width)
            return 1;
        var core = Math.Max(0, 1 - (2 * (stop + (diameter / 2)) / width));
        return Math.Min(1 - (core * core), 1 - (open * Math.Pow(1 - (diameter / width), 2)));
    }

    /// <summary>
    /// m: what a stream that turns along a wall throws out of a layer as deep as its inlet, half of it; after so many turns.
    /// Lapple's form (1951, from memory).
    /// </summary>
    public static double SwirlCut(double inlet, double turns, double speed, double oilDensity, MovingGas gas) =>
        Math.Sqrt(9 * gas.Viscosity * inlet / (2 * Math.PI * turns * speed * (oilDensity - gas.Density)));

    private static double Creeping(double diameter, double share, double fibre, double speed, double oilDensity, MovingGas gas)
    {
        var r = diameter / fibre;
        var ku = Math.Max(0.05, (-Math.Log(share) / 2) - 0.75 + share - (share * share / 4));
        var reach = ((2 * (1 + r) * Math.Log(1 + r)) - (1 + r) + (1 / (1 + r))) / (2 * ku);
        var j = Math.Min(2, ((29.6 - (28 * Math.Pow(share, 0.62))) * r * r) - (27.5 * Math.Pow(r, 2.8)));
        // Past its peak the fitted J falls; it stands for at most 2 there.
        if (r > 0.4)
            j = 2;
        return reach + (Math.Max(0, j) * Stokes(diameter, fibre, speed, oilDensity, gas) / (4 * ku * ku));
    }

    private static double Reach(double r) => 1 + r - (1 / (1 + r));

    private static double Caught(double depth) => -Math.Exp(-depth) + 1;
}
