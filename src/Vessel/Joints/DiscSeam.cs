using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>
/// The fillet on a disc's face, against the bore that it fits: all round, or three tacks. On the upper face, but for the lowest
/// disc of a bore that lies nearer to its lower end.
/// </summary>
internal static class DiscSeam
{
    /// <summary>Common practice, no source; half of the path at most.</summary>
    private const double TackLength = 10;

    private const int Tacks = 3;

    public static bool IsWelded(DiscDesign disc) => disc.Fixed is Fixing.Weld or Fixing.Tabs;

    public static Joint Of(DiscDesign disc, VesselDesign vessel, WeldNumbers welds)
    {
        var wall = Math.Min(disc.Thickness, InternalHost.Wall(disc.Fits, vessel));
        var radius = InternalHost.InnerRadius(disc, vessel);
        return new(
            welds[WeldNumbers.Fixing(disc.Path)],
            $"{disc.Name} to {InternalHost.Name(disc.Fits)}",
            Joint.Sides(InternalHost.Ids(disc, vessel), [Slug.Of(disc.Name)]),
            JointKind.Fillet,
            Interval.Turn,
            [],
            Side(disc, vessel) > 0
                ? Ring.Along(radius, disc.Height + disc.Thickness, Way.Axial(1), Way.Inward, Math.Max(0, disc.Clearance))
                : Ring.Along(radius, disc.Height, Way.Axial(-1), Way.Inward, Math.Max(0, disc.Clearance)),
            FilletThroat.Of(wall),
            wall,
            WeldNumbers.Fixing(disc.Path))
        {
            Role = WeldRole.DiscHold,
            Owner = disc.Path,
            GapKey = $"{disc.Path}.clearance",
            Runs = disc.Fixed == Fixing.Tabs ? Tacked(radius) : [],
        };
    }

    /// <summary>+1 for the upper face, -1 for the lower one.</summary>
    private static int Side(DiscDesign disc, VesselDesign vessel)
    {
        var bore = InternalHost.Heights(disc.Fits, vessel);
        var isLowest = vessel.Inside.Discs.All(other => other.Fits != disc.Fits || other.Height >= disc.Height);
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
