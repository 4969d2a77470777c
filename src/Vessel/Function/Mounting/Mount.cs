using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The full vessel on all its brackets under an acceleration from any side; N, mm, MPa.</summary>
/// <remarks>
/// F = M a acts at the centre of the full vessel, a stiff body on springs: each bracket takes K_i T_i (sum of T^T K T)^-1 F, T taking the
/// body's way to the bracket. How bolts were set and how stiff the wall behind them is can spoil that share: that one bracket bears all of
/// it is the bound that needs neither.
/// </remarks>
internal sealed class Mount
{
    private readonly ImmutableArray<MountSpring> _springs;

    /// <summary>Costs a series a bracket: <see cref="Assembly.Mount"/> keeps it.</summary>
    public Mount(Assembly assembly)
    {
        Full = Weight.Full(assembly);
        Force = Full.Mass * 1e-3 * assembly.Design.Mounting.Acceleration * Air.Gravity;
        _springs = [.. assembly.Members.OfType<ICarrier>().Select(carrier => carrier.Spring(assembly))];
        Loads = [.. Shares(EndHold.Elastic).Zip(_springs, (shared, spring) => new MountLoad(
            spring, shared, Wrench.Of(Force).At(Full.Centre, spring.Welds.Centre), Throats(spring, assembly), assembly.Design.Shell))];
    }

    public Weight Full { get; }

    /// <summary>N, from any side.</summary>
    public double Force { get; }

    public ImmutableArray<MountLoad> Loads { get; }

    /// <summary>Hz: the lowest of the full vessel as a mass at its centre, by how the ears are held.</summary>
    public Amount Frequency => Amount.Around(Hertz(EndHold.Elastic), Hertz(EndHold.Hinged), Hertz(EndHold.Clamped));

    private double Hertz(EndHold hold)
    {
        var body = Body(hold).Inverse();
        Vector3 Row(int i) => new(body[i, 0], body[i, 1], body[i, 2]);
        // mm/N is 1e-3 m/N. Symmetric, so that its norm is its greatest eigenvalue.
        return Math.Sqrt(1 / (SpectralNorm.Of(Row(0), Row(1), Row(2)) * 1e-3 * Full.Mass * 1e-3)) / Turns.Full;
    }

    /// <summary>N/mm and the like: of the body's centre on all its brackets.</summary>
    private SmallMatrix Body(EndHold hold) => _springs.Aggregate(new SmallMatrix(6, 6), (sum, spring) =>
        Way(spring) is var way ? sum + (way.Transposed() * spring.Give(hold).Inverse() * way) : sum);

    private IEnumerable<Wrench> Shares(EndHold hold)
    {
        if (_springs.IsEmpty)
            yield break;
        var body = Body(hold).Inverse();
        var moved = new SmallMatrix(6, 3);
        for (var i = 0; i < 6; i++)
        {
            for (var j = 0; j < 3; j++)
                moved[i, j] = Force * body[i, j];
        }

        foreach (var spring in _springs)
            yield return Wrench.Of(spring.Give(hold).Inverse() * Way(spring) * moved);
    }

    /// <summary>The way of a bracket's welds from that of the centre: d + w x r.</summary>
    private SmallMatrix Way(MountSpring spring)
    {
        var (way, r) = (SmallMatrix.Unit(6), spring.Welds.Centre - Full.Centre);
        (way[0, 4], way[0, 5], way[1, 3]) = (r.Z, -r.Y, -r.Z);
        (way[1, 5], way[2, 3], way[2, 4]) = (r.X, r.Y, -r.X);
        return way;
    }

    /// <summary>
    /// What a bracket's welds may carry, each the least of its own rod and the metals beside it, as a stress on the throat, MPa.
    /// </summary>
    private static Datum Throats(MountSpring spring, Assembly assembly)
    {
        return assembly.Welds.Select(weld => weld.Joint).Where(joint => joint.Owner == spring.Carrier.Path)
            .Select(joint => (Load: assembly.MetalsOf(joint).StrengthOf(joint).Shear, joint.Throat))
            .Select(weld => new Datum(weld.Load.Value / weld.Throat, weld.Load.Source))
            .MinBy(strength => strength.Value)!;
    }
}
