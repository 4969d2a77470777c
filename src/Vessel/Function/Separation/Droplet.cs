namespace Vessel.Function;

/// <summary>How fast drops of oil fall through gas; SI units.</summary>
/// <remarks>
/// Weight against drag: 4 g d (rho_p - rho) / 3 = C_D rho v^2, so with Re = v d rho / mu
/// C_D Re^2 = 4 g d^3 rho (rho_p - rho) / (3 mu^2). C_D = 24 / Re (1 + 0.15 Re^0.687) up to Re 1000 (Schiller and Naumann
/// 1933, from memory), 0.44 beyond. Drops not much larger than the free path of the gas slip through it: their drag is divided by
/// Cunningham's factor C = 1 + (2.34 + 1.05 exp(-0.39 d / l)) l / d (Hinds, Aerosol Technology, from memory). Round drops, alone, in gas
/// without a wall: drops above about 1 mm flatten and fall slower.
/// </remarks>
public static class Droplet
{
    public const string Source = "drag of spheres: Schiller and Naumann 1933, slip of small ones: Cunningham's factor (Hinds), neither "
        + "checked against the source; Stokes' law in the limit; 0.44 beyond Re 1000";

    public const string Range = "round drops of 0.1 um to 1 mm, alone; Re below 1000; the mean speed of the gas (high: twice that, the "
        + "middle of a laminar stream)";

    /// <summary>Where both laws meet.</summary>
    private const double GreatestReynolds = 1000;

    private const double BluntDrag = 0.44;

    /// <summary>
    /// Cunningham's factor, by which the drag of a drop is less than in a gas without gaps; 1 where the free path is not known.
    /// </summary>
    public static double Slip(double diameter, MovingGas gas) =>
        1 + (gas.FreePath / diameter * (2.34 + (1.05 * Math.Exp(-0.39 * diameter / gas.FreePath))));

    /// <summary>m: the drop whose d sqrt(C) is that of a drop without slip.</summary>
    public static double Slipping(double without, MovingGas gas)
    {
        var d = without;
        // C falls as d grows, more slowly than d^-1: each round halves what is left or better.
        for (var i = 0; i < 50; i++)
            d = without / Math.Sqrt(Slip(d, gas));
        return d;
    }

    /// <summary>m/s, by Stokes' law alone: right below a Reynolds number of about 0.5.</summary>
    public static double Stokes(double diameter, double oilDensity, MovingGas gas) =>
        Air.Gravity * diameter * diameter * (oilDensity - gas.Density) / (18 * gas.Viscosity);

    /// <summary>m/s.</summary>
    public static double Fall(double diameter, double oilDensity, MovingGas gas)
    {
        var drive = Slip(diameter, gas) * 4 * Air.Gravity * Math.Pow(diameter,
            3) * gas.Density * (oilDensity - gas.Density) / (3 * gas.Viscosity * gas.Viscosity);
        // Convex, and Stokes' own number lies above the root: Newton comes down to it.
        var reynolds = drive / 24;
        for (var i = 0; i < 60; i++)
        {
            var next = reynolds - ((Drag(reynolds) - drive) / (24 * (1 + (0.15 * 1.687 * Math.Pow(reynolds, 0.687)))));
            if (!(next < reynolds))
                break;
            reynolds = next;
        }

        if (reynolds > GreatestReynolds)
            reynolds = Math.Max(GreatestReynolds, Math.Sqrt(drive / BluntDrag));
        return reynolds * gas.Viscosity / (gas.Density * diameter);
    }

    /// <summary>m: the drop that just falls so fast; zero in gas that stands.</summary>
    public static double Carried(double speed, double oilDensity, MovingGas gas)
    {
        if (speed <= 0)
            return 0;
        // Re (4 g drho mu / (3 rho^2 v^3)) = C_D.
        var k = 4 * Air.Gravity * (oilDensity - gas.Density) * gas.Viscosity / (3 * gas.Density * gas.Density * Math.Pow(speed, 3));
        // The step's own slope is below 0.35 where drag decides and below 0.5 where slip does, so that it closes in on the root.
        var reynolds = Math.Sqrt(24 / k);
        for (var i = 0; i < 80; i++)
            reynolds = Math.Sqrt(
                24 * (1 + (0.15 * Math.Pow(reynolds, 0.687))) / (k * Slip(reynolds * gas.Viscosity / (gas.Density * speed), gas)));
        if (reynolds > GreatestReynolds)
            reynolds = Math.Max(GreatestReynolds, BluntDrag / k);
        return reynolds * gas.Viscosity / (gas.Density * speed);
    }

    /// <summary>C_D Re^2.</summary>
    private static double Drag(double reynolds) => 24 * reynolds * (1 + (0.15 * Math.Pow(reynolds, 0.687)));
}
