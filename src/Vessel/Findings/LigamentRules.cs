using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;
using static Vessel.Model.Allowed;

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

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var design = assembly.Design;
        var paths = assembly.Welds.Select(weld => RootPath.Of(weld.Joint)).ToList();
        var attached = paths.Where(path => path.Joint.Role is WeldRole.PortSeam or WeldRole.Mount).ToList();
        // The crown's seam has a finding of its own.
        var seams = paths.Where(path => path.Joint.Role.IsOfShellOrHead() && path.Joint.Role != WeldRole.CrownSeam).ToList();
        for (var i = 0; i < attached.Count; i++)
        {
            foreach (var other in attached.Take(i).Concat(seams))
            {
                if (MayMeet(attached[i].Joint, other.Joint, assembly) && Between(attached[i], other, design) is { } finding)
                    yield return finding;
            }
        }
    }

    private static Measure? Between(RootPath path, RootPath otherPath, VesselDesign design)
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
                () => $"{joint.Number} ({joint.Name}) comes within {NoteText.Length(distance)} mm of {other.Number} ({other.Name}), root "
                + "to root; "
                + $"{NoteText.Length(limit)} mm leave the toes of both a wall of plate: move one of them.",
                [new("distance", distance, AtLeast(limit), "mm")],
                design.PlaceOf(joint.Owner),
                $"between {joint.Number} and {other.Number}, root to root");
    }

    /// <summary>Distance from the root to the weld's edge: a fillet's leg; of a butt about a wall.</summary>
    private static double Toe(Joint joint) => FilletThroat.Leg(joint.Wall);

    /// <summary>
    /// The two welds of a bracket belong together, and a bracket across the long seam has a finding of its own, as has a port over a head's
    /// seam. A port at the pole ends a cone's seam.
    /// </summary>
    private static bool MayMeet(Joint joint, Joint other, Assembly assembly)
    {
        var design = assembly.Design;
        if (joint.Role == WeldRole.Mount)
            return other.Owner != joint.Owner && !(other.Role == WeldRole.LongSeam && AreOnOneCourse(joint, other, design));
        var site = assembly.Sites.Single(site => site.Port.Path == joint.Owner);
        return site.Over is { } end
            ? !(other.Role == WeldRole.HeadSeam && other.Owner == design.Head(end).Path)
            : !(other.Role.IsOfHead() && site.Port is { Host: not PortHost.Shell, Place.Radius: 0 });
    }

    /// <summary>Whether a weld on the shell stands on the course that a seam runs up.</summary>
    private static bool AreOnOneCourse(Joint joint, Joint seam, VesselDesign design) =>
        design.Shell.Courses.First(course => Names.ShellParts(course, design).Contains(joint.Between[0])).SeamPaths.Contains(seam.Path);

    /// <summary>A joint with the root lines of what is laid of it.</summary>
    private sealed record RootPath(Joint Joint, ImmutableArray<SpaceCurve> Runs)
    {
        public static RootPath Of(Joint joint) =>
            new(joint, [.. joint.Welded.Select(run => new SpaceCurve(t => joint.Along(t).Root, run))]);
    }
}
