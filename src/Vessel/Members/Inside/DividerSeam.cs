using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Members.Inside;

/// <summary>
/// The fillet on a disc's face, against the bore that it fits: all round, or three tacks. On the upper face, but for the lowest
/// disc of a bore that lies nearer to its lower end.
/// </summary>
internal static class DividerSeam
{
    /// <summary>Common practice, no source; half of the path at most.</summary>
    private const double TackLength = 10;

    private const int Tacks = 3;

    private static readonly JointWords _words = new("level, to its height by the set-up table; ")
    {
        Heed = "short beads opposite to each other; the disc buckles when it is run round at once",
        Remedy = "move the disc nearer to the open end, or hold it with screws or a press fit (fixed)",
    };

    public static Joint Of(DividerSpec disc, VesselDesign vessel)
    {
        var wall = Math.Min(disc.Thickness, InternalHost.Wall(disc.Fits, vessel));
        var radius = InternalHost.InnerRadius(disc, vessel);
        return new(
            $"{disc.Name} to {InternalHost.Name(disc.Fits)}",
            Joint.Sides(InternalHost.Ids(disc, vessel), [Slug.Of(disc.Name)]),
            JointKind.Fillet,
            Interval.Turn,
            [],
            Side(disc, vessel) > 0
                ? LevelRing.Along(radius, disc.Height + disc.Thickness, Way.Axial(1), Way.Inward, Math.Max(0, disc.Clearance))
                : LevelRing.Along(radius, disc.Height, Way.Axial(-1), Way.Inward, Math.Max(0, disc.Clearance)),
            FilletThroat.Of(wall),
            wall,
            $"{disc.Path}.fixed")
        {
            Role = WeldRole.Hold,
            Words = _words,
            Owner = disc.Path,
            GapKey = $"{disc.Path}.clearance",
            Runs = disc.Fixed == Fixing.Tabs ? Tacked(radius) : [],
        };
    }

    /// <summary>+1 for the upper face, -1 for the lower one.</summary>
    private static int Side(DividerSpec disc, VesselDesign vessel)
    {
        var bore = InternalHost.Heights(disc.Fits, vessel);
        var isLowest = vessel.All<DividerSpec>().All(other => other.Fits != disc.Fits || other.Height >= disc.Height);
        return isLowest && disc.Height - bore.Start < bore.End - disc.Height - disc.Thickness ? -1 : 1;
    }

    /// <summary>Round 60, 180 and 300 degrees.</summary>
    private static ImmutableArray<Interval> Tacked(double radius)
    {
        var half = Math.Min(TackLength / radius, Math.PI / Tacks) / 2;
        return
        [
            .. Enumerable.Range(0, Tacks)
                .Select(i => Turns.Full * (i + 0.5) / Tacks)
                .Select(middle => new Interval(middle - half, middle + half)),
        ];
    }
}
