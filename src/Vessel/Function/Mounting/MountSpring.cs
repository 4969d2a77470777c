using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>
/// A carrier as a spring between what it is bolted to and the vessel, which is stiff but for the wall under its welds; forces
/// and moments at the welds' centre in the vessel's directions; N, mm, MPa.
/// </summary>
internal abstract record MountSpring(Carrier Carrier, WeldGroup Welds, WallUnder Wall)
{
    /// <summary>
    /// What is bent between shell and bolts, its welds, and the shell under them, in words; the first two again in short.
    /// </summary>
    public abstract (string Member, string Welds, string Wall, string Bent, string BentWelds) Words { get; }

    /// <summary>Name of the figure on what is bent.</summary>
    public abstract string MemberName { get; }

    /// <summary>A sentence on how it fails, the same for all of a kind; null where none is called for.</summary>
    public virtual string? Warning => null;

    public abstract BoltGroup Bolts(Wrench load);

    /// <summary>MPa in what is bent between shell and bolts.</summary>
    public abstract double MemberStress(Wrench load, EndHold hold);

    /// <summary>N mm on each mm of the welds by which the carrier turns them about their own line, for the worst direction.</summary>
    public abstract Vector3 Bent(Wrench load, EndHold hold);

    /// <summary>Formula of <see cref="MemberStress"/>, and what goes into it.</summary>
    public abstract (string Formula, FigureInput[] Inputs) MemberFormula { get; }

    /// <summary>mm and radians of the welds' centre under unit forces and moments, the carrier alone.</summary>
    public abstract SmallMatrix Bends(EndHold hold);

    /// <summary>Give of carrier and wall together: mm and radians of the welds' centre under unit forces and moments.</summary>
    public SmallMatrix Give(EndHold hold) => Bends(hold) + Wall.Give;

    protected double Elasticity => Strengths.Of(Carrier.Material).Elasticity;

    /// <summary>Takes a unit row of six into a symmetric product: a spring of one direction.</summary>
    protected static void Add(SmallMatrix to, double give, (Vector3 Force, Vector3 Moment) a, (Vector3 Force, Vector3 Moment) b)
    {
        double[] first = [a.Force.X, a.Force.Y, a.Force.Z, a.Moment.X, a.Moment.Y, a.Moment.Z];
        double[] second = [b.Force.X, b.Force.Y, b.Force.Z, b.Moment.X, b.Moment.Y, b.Moment.Z];
        for (var i = 0; i < 6; i++)
        {
            for (var j = 0; j < 6; j++)
                to[i, j] += give * first[i] * second[j];
        }
    }
}

/// <summary>How an ear is held where it meets the shell; at the plate it is clamped.</summary>
internal enum EndHold
{
    /// <summary>The fillet along one side of it has yielded, or has cracked at its root.</summary>
    Hinged,

    /// <summary>Hold by a sound fillet on a wall that gives.</summary>
    Elastic,

    /// <summary>Hold on a wall that does not give.</summary>
    Clamped,
}
