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
        var attached = assembly.Welds.Select(weld => weld.Joint).Where(joint => IsAttached(joint, design)).ToList();
        var seams = assembly.Welds.Select(weld => weld.Joint).Where(joint => IsOfShell(joint, design)).ToList();
        for (var i = 0; i < attached.Count; i++)
        {
            foreach (var other in attached.Take(i).Concat(seams))
            {
                if (!AreOfOneBracket(attached[i], other, design) && Between(attached[i], other, design) is { } finding)
                    yield return finding;
            }
        }
    }

    private static Finding? Between(Joint joint, Joint other, VesselDesign design)
    {
        var limit = Toe(joint) + Toe(other) + Math.Min(joint.Wall, other.Wall);
        // A bracket across the seam has a finding of its own.
        if (joint.Welded.SelectMany(one => other.Welded.Select(two => ClosestApproach.Between(
            (t => joint.Along(t).Root, one), (t => other.Along(t).Root, two), limit, Width))).Min(found => found?.Start) is not { } distance
            || (IsOfBracket(joint, design) && other.Path == WeldNumbers.LongSeam))
        {
            return null;
        }

        return distance >= limit
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
        design.Bracket is { } bracket && WeldNumbers.EarsOf(bracket).Contains(joint.Path);

    /// <summary>The two ears stand as far apart as the bracket is wide.</summary>
    private static bool AreOfOneBracket(Joint joint, Joint other, VesselDesign design) =>
        IsOfBracket(joint, design) && IsOfBracket(other, design);

    private static bool IsOfShell(Joint joint, VesselDesign design) =>
        joint.Path == WeldNumbers.LongSeam || joint.Path == design.Top.Path || joint.Path == design.Bottom.Path;
}
