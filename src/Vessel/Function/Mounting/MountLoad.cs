using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>What the full vessel does to one of its carriers; N, mm, MPa.</summary>
/// <param name="Shared">Forces and moments at the welds' centre, all brackets sharing by how stiff they are.</param>
/// <param name="Alone">The same if it hung on this one alone.</param>
/// <param name="Throat">What the throats of its welds may carry, MPa.</param>
internal sealed record MountLoad(MountSpring Spring, Wrench Shared, Wrench Alone, Datum Throat, ShellDesign Shell)
{
    public Carrier Carrier => Spring.Carrier;

    /// <summary>
    /// On the throats: likely where a fillet on one side, bent about its root, has yielded to a hinge, which a single load does without
    /// harm since the hinged ears are in balance too; at most with that bending.
    /// </summary>
    public Amount WeldStress => Over(EndHold.Hinged, (load, hold) => Spring.Welds.Stress(load, Spring.Bent(load, hold)));

    /// <summary>Stress on the throats as long as nothing has yielded, MPa: what fatigue goes by.</summary>
    public double WeldBending => Spring.Welds.Stress(Shared, Spring.Bent(Shared, EndHold.Elastic));

    /// <summary>Stress in the shell's wall under the welds.</summary>
    public Amount WallStress => Over(EndHold.Elastic, (load, hold) => Spring.Wall.Stress(load, Spring.Bent(load, hold)));

    /// <summary>Stress in ears or plate.</summary>
    public Amount MemberStress => Over(EndHold.Elastic, Spring.MemberStress);

    public Amount BoltTension => Over(EndHold.Elastic, (load, _) => Spring.Bolts(load).Tension);

    public Amount BoltShear => Over(EndHold.Elastic, (load, _) => Spring.Bolts(load).Shear);

    public Amount BoltShare => Over(EndHold.Elastic, (load, _) => Spring.Bolts(load).Share);

    /// <summary>
    /// What each piece is loaded with and what it bears. The shell counts where its wall is thin and the series fine enough.
    /// </summary>
    public IEnumerable<MountMargin> Margins()
    {
        var (metal, shell) = (Strengths.Of(Carrier.Material), Strengths.Of(Shell.Material));
        yield return new(Carrier, Spring.Words.Wall, WallStress, shell.Yield);
        yield return new(Carrier, Spring.Words.Member, MemberStress, metal.Yield);
        yield return new(Carrier, Spring.Words.Welds, WeldStress, Throat.Value);
        yield return new(Carrier, "the bracket's bolts", BoltStrength.Proof * BoltShare, BoltStrength.Proof);
    }

    /// <summary>mm by which the holes move apart when the vessel warms and what it is bolted to does not.</summary>
    public double Growth(double perKelvin, double kelvins) => perKelvin * Math.Abs(kelvins) * BoltGroup.Spread(Carrier.Bolts);

    /// <summary>Over all ways in which the ears may be held, shared and alone.</summary>
    private Amount Over(EndHold likely, Func<Wrench, EndHold, double> stress)
    {
        double[] all = [.. from load in new[] { Shared, Alone } from hold in Enum.GetValues<EndHold>() select stress(load, hold)];
        return new(all.Min(), stress(Shared, likely), all.Max());
    }
}

/// <summary>What a piece of a mounting bears, and what it is loaded with; MPa.</summary>
internal readonly record struct MountMargin(Carrier Carrier, string What, Amount Stress, double Bears)
{
    public Amount Margin
    {
        get
        {
            var bears = Bears;
            return Stress.Through(stress => bears / stress);
        }
    }
}
