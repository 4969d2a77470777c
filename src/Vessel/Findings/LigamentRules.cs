using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Welds on the outside that come too near to each other: the plate between them warps, cracks or cannot be reached.</summary>
/// <remarks>
/// Distances run straight in space between the root lines. Toes keep one wall of plate between them. Common practice, no
/// source: published rules for openings (several walls apart) are for vessels under pressure.
/// </remarks>
internal static class LigamentRules
{
    /// <summary>Bounds on a distance are no further apart, mm.</summary>
    private const double Width = 0.05;

    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        var design = assembly.Design;
        var paths = assembly.Welds.Select(weld => RootPath.Of(weld.Joint)).ToList();
        var attached = paths.Where(path => IsAttached(path.Joint, design)).ToList();
        var seams = paths.Where(path => IsOfShell(path.Joint, design) || IsOfHead(path.Joint, design)).ToList();
        for (var i = 0; i < attached.Count; i++)
        {
            foreach (var other in attached.Take(i).Concat(seams))
            {
                if (MayMeet(attached[i].Joint, other.Joint, design) && Between(attached[i], other, design) is { } finding)
                    yield return finding;
            }
        }
    }

    private static Finding? Between(RootPath path, RootPath otherPath, VesselDesign design)
    {
        var (joint, other) = (path.Joint, otherPath.Joint);
        var limit = Toe(joint) + Toe(other) + Math.Min(joint.Wall, other.Wall);
        var found = from one in path.Runs
                    from two in otherPath.Runs
                    select ClosestApproach.Between(one, two, limit, Width)?.Start;
        return found.Min() is not { } distance || distance >= limit
            ? null
            : new(
                FindingCodes.LigamentTooNarrow,
                Severity.Warning,
                [.. joint.Between.Concat(other.Between).Distinct()],
                $"{joint.Number} ({joint.Name}) comes within {NoteText.Length(distance)} mm of {other.Number} ({other.Name}), root to root; "
                + $"{NoteText.Length(limit)} mm leave the toes of both a wall of plate: move one of them.",
                [new("distance", distance, limit, "mm")],
                design.PlaceOf(joint.Path));
    }

    /// <summary>From the root to the weld's edge: a fillet's leg; of a butt about a wall.</summary>
    private static double Toe(Joint joint) => FilletThroat.Leg(joint.Wall);

    private static bool IsAttached(Joint joint, VesselDesign design) =>
        design.Ports.Any(port => port.Path == joint.Path) || IsOfBracket(joint, design);

    private static bool IsOfBracket(Joint joint, VesselDesign design) =>
        BracketOf(joint, design) is not null;

    private static BracketDesign? BracketOf(Joint joint, VesselDesign design) =>
        design.Brackets.FirstOrDefault(bracket => WeldNumbers.OfBracket(bracket).Contains(joint.Path));

    /// <summary>
    /// The two welds of a bracket belong together, and a bracket across the long seam has a finding of its own, as has a port over a head's
    /// seam. A port at the pole ends a cone's seam.
    /// </summary>
    private static bool MayMeet(Joint joint, Joint other, VesselDesign design) =>
        BracketOf(joint, design) is { } bracket ? !(BracketOf(other, design) == bracket || design.Shell.CourseAt(bracket.Height).SeamPaths.Contains(other.Path))
            : design.Ports.FirstOrDefault(port => port.Path == joint.Path) is not { } port
                || (OverSeam.Of(design, port) is { } end ? other.Path != design.Head(end).Path
                    : !(IsOfHead(other, design) && port is { Host: not PortHost.Shell, Place.Radius: 0 }));

    private static bool IsOfShell(Joint joint, VesselDesign design) =>
        WeldNumbers.IsOfShell(joint.Path, design.Shell) || joint.Path == design.Top.Path || joint.Path == design.Bottom.Path;

    /// <summary>Between gores, or of a cone; the polar cap's has a finding of its own.</summary>
    private static bool IsOfHead(Joint joint, VesselDesign design) => new[] { design.Top, design.Bottom }.Any(head =>
        WeldNumbers.OfHead(head).Contains(joint.Path) && !(head is DishedHead { Gores: { } gores } && WeldNumbers.CapSeam(gores) == joint.Path));

    /// <summary>A joint with the root lines of what is laid of it.</summary>
    private sealed record RootPath(Joint Joint, ImmutableArray<SpaceCurve> Runs)
    {
        public static RootPath Of(Joint joint) =>
            new(joint, [.. joint.Welded.Select(run => new SpaceCurve(t => joint.Along(t).Root, run))]);
    }
}
