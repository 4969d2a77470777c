using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>What there is to be done for a vessel, in the order of the parts and welds.</summary>
internal static class WorkTasks
{
    public static IEnumerable<WorkTask> Of(
        VesselDesign design, ImmutableArray<PortSite> sites, ImmutableArray<Head> heads, ImmutableArray<Member> members,
        ImmutableArray<Part> parts, ImmutableArray<Joint> welds)
    {
        var last = design.Head(ClosingEnd(design, sites)).Path;
        foreach (var part in parts)
            yield return new(WorkTask.Making(part), WorkKind.Make, Making(part, design.Shop.Welding.FaceAllowance), WorkRank.Make,
                [part.Id]);
        var groups = TackGroup.Of(welds);
        foreach (var weld in welds)
        {
            if (groups.FirstOrDefault(group => group.Joints[0] == weld) is { } tacked)
                yield return Tacking(tacked, last);
            yield return new(
                WorkTask.Welding(weld.Number), WorkKind.Weld, weld.Name, RankOf(weld, last),
                [.. weld.Between.Distinct()], weld);
            // Once for all seams of what is put together from several sheets.
            if (weld.Role is WeldRole.LongSeam or WeldRole.InnerSeam && welds.Last(other => Rounding(other) == Rounding(weld)) == weld)
                yield return Round(weld, [.. welds.Where(other => Rounding(other) == Rounding(weld))], design, last);
        }

        foreach (var task in heads.SelectMany(head => head.Tasks).Concat(members.SelectMany(member => member.Tasks)))
            yield return task;

        yield return new(WorkTask.Cleaning, WorkKind.Clean, WorkText.Cleaning(parts), WorkRank.Clean, []);
        yield return new(WorkTask.Testing, WorkKind.Test, WorkText.Testing(LeakKit.Of(design, welds)), WorkRank.Test, []);
        if (design.Finish != Finish.None)
            yield return new(WorkTask.Finishing, WorkKind.Finish, WorkText.Finishing(design), WorkRank.Finish, []);
    }

    public static string Rounding(Joint seam) => $"round {LongSeam.Turning(seam)}";

    private static WorkTask Tacking(TackGroup group, string closing) => new(
        group.Task, WorkKind.Tack, string.Join(", ", group.Joints.Select(joint => joint.Name)), RankOf(group.Joints[0], closing),
        [.. group.Joints.SelectMany(joint => joint.Between).Distinct()])
    {
        Tacked = group.Joints,
    };

    /// <summary>
    /// Which end is welded last: the one across from a tube that passes into a packing, which is laid round it; else the one that carries
    /// the
    /// internals, for they go in with it; else the top.
    /// </summary>
    public static VesselEnd ClosingEnd(VesselDesign design, ImmutableArray<PortSite> sites)
    {
        if (design.All<PackingDesign>().Select(packing => PackingRoom.EnteredFrom(packing, design, sites))
            .FirstOrDefault(end => end is not null) is { } entered)
            return entered == VesselEnd.Top ? VesselEnd.Bottom : VesselEnd.Top;
        var ends = design.All<HangingSpec>().Select(hanging => hanging.HangsFrom).ToList();
        if (ends.Count > 0)
            return ends.TrueForAll(end => end == VesselEnd.Bottom) ? VesselEnd.Bottom : VesselEnd.Top;
        // What stands over a head's seam is drilled and welded while the other end is open.
        var over = sites.Select(site => site.Over).ToHashSet();
        return over.Contains(VesselEnd.Top) && !over.Contains(VesselEnd.Bottom) ? VesselEnd.Bottom : VesselEnd.Top;
    }

    private static WorkTask Round(Joint last, ImmutableArray<Joint> seams, VesselDesign design, string closing)
    {
        var course = design.Shell.Courses.FirstOrDefault(course => course.SeamPaths.Contains(last.Path));
        return new(
            Rounding(last), WorkKind.Round,
            $"press {course?.Id ?? last.Between[0]} round over a bar, grind the {(seams.Length > 1 ? "seams' roots" : "seam's root")} "
                + "flush",
            RankOf(last, closing), [.. seams.SelectMany(seam => seam.Between).Distinct()]);
    }

    /// <param name="closing">Path of the weld that closes the vessel.</param>
    private static int RankOf(Joint weld, string closing) => weld.Role switch
    {
        WeldRole.LongSeam => WorkRank.LongSeam,
        WeldRole.GirthSeam => WorkRank.Girth,
        WeldRole.ConeSeam or WeldRole.GoreSeam or WeldRole.CrownSeam => WorkRank.Gores,
        WeldRole.PortSeam => WorkRank.Ports,
        WeldRole.MitreSeam => WorkRank.Ports - 1,
        WeldRole.Mount => WorkRank.Bracket,
        WeldRole.HeadSeam => weld.Path == closing ? WorkRank.Close : WorkRank.FirstHead,
        _ => WorkRank.Inside,
    };

    private static string Making(Part part, double faceAllowance)
    {
        var hasOpenings = part.Holes.Any(hole => !hole.IsLater) || part.Flat is { Cut.Holes.IsEmpty: false };
        var openings = hasOpenings ? " with its openings" : "";
        var wrapped = hasOpenings ? ", wrap its drawing round it, cut its openings" : "";
        var mitre = part.SawNote is { } note ? $", {note}" : "";
        var many = part.Quantity > 1 ? $"{part.Quantity} x " : "";
        var shaping = part.Shaping ?? (part.Flat is { Bends.IsEmpty: false } ? "bend" : null);
        var holes = part.Fields.Sum(field => field.Lattice.Count);
        return part.Kind switch
        {
            PartKind.Branch => IsCoped(part)
                ? $"saw {part.Name}, wrap its drawing round it, cut and grind its end to the line{mitre}, deburr"
                : $"saw {part.Name} square{mitre}{wrapped}, deburr",
            PartKind.Elbow => $"saw {many}{part.Name} by its wrap, {part.SawNote}; deburr",
            PartKind.Bung => $"turn and tap {part.Name}, or buy "
                + $"it{(part.Holes[0].Thread is { IsTaper: true } ? "" : FormattableString.Invariant($"; {faceAllowance:0.##} mm over length for its sealing face"))}",
            _ when part.Making is { } making => making,
            _ when part.Stock.Form == "tube" => $"saw {part.Name} from tube{wrapped}, deburr",
            _ when part.Flat?.From is RolledDevelopment =>
                $"cut {part.Name} from sheet{openings}, deburr, "
                    + $"roll{(part.Holes.Any(hole => hole is { Outline: null, IsLater: false }) ? ", cut out its large openings" : "")}",
            _ when holes > 0 => FormattableString.Invariant($"cut {many}{part.Name} with its {holes} holes, or from perforated sheet, ")
                + "deburr",
            _ => $"cut {many}{part.Name}{openings}, deburr{(shaping is null ? "" : $", {shaping}")}",
        };
    }

    /// <summary>An end that is cut square lies straight on the wrap, along its first edge.</summary>
    internal static bool IsCoped(Part part) =>
        part.Kind == PartKind.Branch && part.Flat is { } flat && flat.Cut.Outer.Edges[0] is not Line2;
}
