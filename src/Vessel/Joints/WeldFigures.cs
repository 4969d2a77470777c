using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>What a joint takes.</summary>
/// <param name="Length">Length of the root line, mm.</param>
/// <param name="Leg">Least and greatest leg, mm.</param>
/// <param name="Dihedral">Least and greatest angle between the surfaces, radians.</param>
/// <param name="Deposit">Metal laid down, mm3: the section swept along the path of its centroid.</param>
/// <param name="GapNormal">Greatest, mm.</param>
/// <param name="GapAxial">Greatest, mm.</param>
/// <param name="GrooveShare">Share of the stations beyond the greatest fillet angle.</param>
/// <param name="Stations">Evenly round, at least 72, without the repeated end of a closed path.</param>
public sealed record WeldFigures(
    Joint Joint,
    double Length,
    Interval Leg,
    Interval Dihedral,
    double Deposit,
    double GapNormal,
    double GapAxial,
    double GrooveShare,
    ImmutableArray<(double Parameter, Station At)> Stations)
{
    /// <summary>Every 5 degrees round a closed path.</summary>
    private const int StationCount = 72;

    /// <summary>Above the noise of the difference quotient that the centroid's path is followed by.</summary>
    private const double DepositAccuracy = 1e-7;

    public static WeldFigures Of(Joint joint)
    {
        var stations = Parameters(joint, StationCount).Select(t => (t, joint.Along(t))).ToImmutableArray();
        var fine = Parameters(joint, 10 * StationCount).Select(joint.Along).ToList();
        var legs = fine.ConvertAll(at => Bead.Of(joint, at).Leg);
        return new(
            joint,
            joint.Length,
            new(legs.Min(), legs.Max()),
            new(fine.Min(at => at.Dihedral), fine.Max(at => at.Dihedral)),
            joint.Welded.Sum(run => Quadrature.Periodic(t => Swept(joint, t), run, joint.BreaksIn(run), DepositAccuracy)),
            fine.Max(at => at.GapNormal),
            fine.Max(at => at.GapAxial),
            joint.Kind == JointKind.Fillet ? fine.Average(at => FilletThroat.IsTooFlat(at.Dihedral) ? 1.0 : 0.0) : 0,
            stations);
    }

    /// <summary>Evenly along each run, at least so many together.</summary>
    private static IEnumerable<double> Parameters(Joint joint, int count)
    {
        var each = (count + joint.Welded.Length - 1) / joint.Welded.Length;
        return joint.Welded.SelectMany(run => Enumerable.Range(0, each).Select(i => run.At((double)i / each)));
    }

    /// <summary>
    /// dV/dt: a section that stays square to the root line sweeps area x (d centroid / dt along the tangent), which is
    /// Pappus' rule for a path that turns.
    /// </summary>
    private static double Swept(Joint joint, double t)
    {
        var h = 1e-4 * joint.Domain.Length;
        var (low, high) = (Math.Max(joint.Domain.Start, t - h), Math.Min(joint.Domain.End, t + h));
        var at = joint.Along(t);
        var (before, after) = (joint.Along(low), joint.Along(high));
        var moved = after.Root - before.Root + Bead.Of(joint, after).Centroid - Bead.Of(joint, before).Centroid;
        return Bead.Of(joint, at).Area * moved.Dot(at.Tangent.Unit()) / (high - low);
    }
}
