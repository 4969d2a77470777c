using MathNet.Numerics.Interpolation;

namespace Vessel.Function;

/// <summary>What one packing takes out of the gas, by the size of drops; SI units.</summary>
/// <remarks>
/// Of n fibres a length the share exp(-4 a f L E / (pi (1 - a) D)) passes, with the share a of fibre, its diameter D, the depth L, and
/// the part f of the fibres that lies across the gas (2/3, Carpenter and Othmer 1955, from memory; all of them at most). E of one fibre is
/// found by <see cref="FibreCatch"/>: low in Kuwabara's creeping flow, high in potential flow; likely between the two by the logarithm of
/// the fibre's Reynolds number from 1 to 10, by which Landahl and Herrmann 1949 (from memory) measured nearly what potential flow gives.
/// Each is followed at 57 sizes from a two-hundredth of the fibre up to its own, and read between by a monotone cubic in logarithms (within
/// 6 % where catching sets in); below it goes with the square of the size, above nothing is added but the drop's own reach at most.
/// </remarks>
internal sealed class PadCatch
{
    public const string Source =
        "drops followed round one fibre: low in the flow of Kuwabara 1959 (interception and inertia), high in potential flow, likely "
        + "between them by the "
        + "logarithm of the fibre's Reynolds number from 1 to 10, derived here; fibres across the gas 2/3: Carpenter and Othmer 1955, not "
        + "checked against the source";

    public const string Range =
        "drops above 0.5 um, fibre share 0.005 to 0.1, dry and even bed without gaps at its edge; Kuwabara's flow below fibre Re of 1; no "
            + "drop torn off again";

    /// <summary>Share of the fibres of a pad that lie across the gas.</summary>
    private const double AcrossShare = 2.0 / 3;

    private const double CreepingReynolds = 1;

    private const double InertiaReynolds = 10;

    private const double LeastReach = 0.005;

    private const int ADecade = 24;

    private readonly double _fibre;

    /// <summary>Fibre that a drop meets per E: 4 a L / (pi (1 - a) D).</summary>
    private readonly double _depth;

    private readonly double _part;

    private readonly Lazy<Func<double, double>> _low;

    private readonly Lazy<(Func<double, double> Creeping, Func<double, double> Fast)> _likely;

    private readonly Lazy<Func<double, double>> _high;

    /// <param name="share">Share of fibre.</param>
    /// <param name="fibre">Diameter, m.</param>
    /// <param name="length">Along the gas, m.</param>
    /// <param name="speed">Between the fibres, m/s.</param>
    public PadCatch(double share, double fibre, double length, Amount speed, double density, MovingGas gas)
    {
        _fibre = fibre;
        _depth = 4 * share * length / (Math.PI * (1 - share) * fibre);
        var reynolds = speed.Likely * fibre * gas.Density / gas.Viscosity;
        _part = Math.Clamp(Math.Log(reynolds / CreepingReynolds) / Math.Log(InertiaReynolds / CreepingReynolds), 0, 1);
        Func<double, double> Followed(FibreField field, double at) => Curve(
            field, fibre, reach => Impaction.Stokes(reach * fibre, fibre, at, density, gas));
        _low = new(() => Followed(FibreField.Kuwabara(share), speed.Low));
        _likely = new(() =>
        {
            var creeping = speed.IsSingle ? _low.Value : Followed(FibreField.Kuwabara(share), speed.Likely);
            return (creeping, _part == 0 ? creeping : speed.IsSingle ? _high!.Value : Followed(FibreField.Alone, speed.Likely));
        });
        _high = new(() => Followed(FibreField.Alone, speed.High));
    }

    /// <summary>Efficiency of one fibre, on its diameter, for drops of a diameter.</summary>
    public Amount OneFibre(double diameter)
    {
        var most = 1 + (diameter / _fibre);
        var (low, high) = (Math.Min(most, _low.Value(diameter)), diameter > _fibre ? most : Math.Min(most, _high.Value(diameter)));
        var (creeping, fast) = _likely.Value;
        var likely = Math.Pow(creeping(diameter), 1 - _part) * Math.Pow(fast(diameter), _part);
        return new(Math.Min(low, high), Math.Clamp(likely, Math.Min(low, high), high), high);
    }

    /// <summary>Share of the drops of a size that strikes a fibre of the pad.</summary>
    public Amount Share(double diameter)
    {
        var one = OneFibre(diameter);
        return new(Caught(AcrossShare * _depth * one.Low), Caught(AcrossShare * _depth * one.Likely), Caught(_depth * one.High));
    }

    private static double Caught(double depth) => -Math.Exp(-depth) + 1;

    private static Func<double, double> Curve(FibreField field, double fibre, Func<double, double> stokes)
    {
        var steps = (int)Math.Ceiling(-Math.Log10(LeastReach) * ADecade);
        var at = Enumerable.Range(0, steps + 1).Select(i => (1 - ((double)i / steps)) * Math.Log(LeastReach)).ToArray();
        var shares = at.Select(log => Math.Log(FibreCatch.Share(field, Math.Exp(log), stokes(Math.Exp(log))))).ToArray();
        var spline = CubicSpline.InterpolatePchipSorted(at, shares);
        return diameter =>
        {
            var log = Math.Log(diameter / fibre);
            return Math.Exp(log < at[0] ? shares[0] + (2 * (log - at[0])) : spline.Interpolate(Math.Min(log, 0)));
        };
    }
}
