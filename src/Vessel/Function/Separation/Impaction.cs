namespace Vessel.Function;

/// <summary>Drops that strike walls and edges because they cannot follow the gas; SI units. Of fibres see <see cref="PadCatch"/>.</summary>
public static class Impaction
{
    public const string JetSource = "round-jet impactors: root of St (on the jet's radius) = 0.49 at half caught, Marple and Willeke 1976 "
        + "(not checked against the source)";

    public const string JetRange = "jet Re 500 to 3000, wall 1 to 5 jet diameters away and square to the jet";

    /// <summary>Stokes number on the diameter of what is struck.</summary>
    public static double Stokes(double diameter, double across, double speed, double oilDensity, MovingGas gas) =>
        StoppingDistance(diameter, speed, oilDensity, gas) / across;

    /// <summary>Surface of fibres in a volume, 1/m.</summary>
    public static double FibreSurface(double share, double fibre) => 4 * share / fibre;

    /// <summary>m: what a round jet of a diameter throws half of on a wall across it.</summary>
    public static double JetCut(double jet, double speed, double oilDensity, MovingGas gas) =>
        // On the radius St is twice that on the diameter: 0.49^2 = rho d^2 v / (9 mu D).
        Droplet.Slipping(0.49 * Math.Sqrt(9 * gas.Viscosity * jet / (oilDensity * speed)), gas);

    public const string EdgeSource =
        "bounds derived here: in a turn a drop drifts outward by the angle times its stopping distance, whatever the turn's radius (the "
        + "plug-flow law "
        + "of bends, Crane and Evans 1977, not checked against the source); at an opening it leaves its thread of gas by no more than its "
        + "stopping distance";

    public const string EdgeRange = "an upper bound alone: the gas turns by 180 degrees at most, Stokes drag; no published correlation "
        + "covers screens in series";

    /// <summary>m: how far a drop flies on when the gas stops, by Stokes' drag.</summary>
    public static double StoppingDistance(double diameter, double speed, double oilDensity, MovingGas gas) =>
        oilDensity * diameter * diameter * Droplet.Slip(diameter, gas) * speed / (18 * gas.Viscosity);

    /// <summary>
    /// Greatest share that a turn by 180 degrees in a gap throws on its outer wall: pi times the stopping distance over the gap.
    /// </summary>
    /// <param name="gap">m.</param>
    public static double TurnAtMost(double stop, double gap) => Math.Min(1, Math.PI * stop / gap);

    /// <summary>
    /// Greatest share that the metal round an opening catches: of the gas in a ring along its edge as wide as the stopping distance and
    /// half a drop, and never more than flies straight at the metal, unless a drop is wider than the opening.
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
        Droplet.Slipping(Math.Sqrt(9 * gas.Viscosity * inlet / (2 * Math.PI * turns * speed * (oilDensity - gas.Density))), gas);
}
