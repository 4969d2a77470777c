using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Planning;

/// <summary>Order constraints between tasks, and why; common practice, no source, where no reason of geometry stands behind it.</summary>
internal sealed class OrderRules
{
    private readonly VesselDesign _design;
    private readonly ImmutableArray<PortSite> _sites;
    private readonly VesselEnd _closing;
    private readonly ImmutableArray<Joint> _welds;
    private readonly ImmutableHashSet<string> _ids;
    private readonly ImmutableDictionary<VesselEnd, string> _closes;

    private OrderRules(
        VesselDesign design, ImmutableArray<PortSite> sites, ImmutableArray<Head> heads, Welds numbered, ImmutableArray<WorkTask> tasks)
    {
        (_design, _sites, _welds) = (design, sites, numbered.All);
        _closes = heads.ToImmutableDictionary(head => head.End, head => head.ClosingTask(numbered));
        _closing = WorkTasks.ClosingEnd(design, sites);
        _ids = [.. tasks.Select(task => task.Id)];
    }

    public static ImmutableArray<WorkLink> Of(
        VesselDesign design, ImmutableArray<PortSite> sites, ImmutableArray<Head> heads, ImmutableArray<Member> members, Welds numbered,
            ImmutableArray<WorkTask> tasks)
    {
        var rules = new OrderRules(design, sites, heads, numbered, tasks);
        ImmutableArray<WorkLink> links =
        [
            .. new[]
                {
                    Parts(tasks), rules.Rolled(), rules.Girths(), rules.Shell(), rules.OverSeams(), rules.Heads(heads, numbered),
                    rules.Inside(),
                    rules.Closing(tasks), members.SelectMany(member => member.Links(numbered)),
                }
                .SelectMany(links => links)
                .Where(link => rules._ids.Contains(link.Before) && rules._ids.Contains(link.After)),
        ];
        return [.. links.Concat(Tacked(links, tasks)).DistinctBy(link => (link.Before, link.After))];
    }

    /// <summary>All of a group are tacked before one of them is welded, and what one of them waits for the tacks wait for.</summary>
    private static IEnumerable<WorkLink> Tacked(ImmutableArray<WorkLink> links, ImmutableArray<WorkTask> tasks)
    {
        foreach (var group in tasks.Where(task => task.Kind == WorkKind.Tack))
        {
            var welds = group.Tacked.Select(Id).ToHashSet();
            foreach (var weld in welds)
                yield return new(group.Id, weld, "the first bead would pull the others out of their place");
            foreach (var link in links.Where(link => welds.Contains(link.After) && !welds.Contains(link.Before) && link.Before != group.Id))
                yield return link with { After = group.Id };
        }
    }

    /// <summary>A part is made before anything is done with it.</summary>
    private static IEnumerable<WorkLink> Parts(ImmutableArray<WorkTask> tasks) =>
        from task in tasks
        where task.Kind != WorkKind.Make
        from part in task.Parts
        select new WorkLink($"make {part}", task.Id, "the part must be made first");

    private IEnumerable<WorkLink> Rolled() =>
        from seam in _welds.Where(weld => weld.Role is WeldRole.LongSeam or WeldRole.InnerSeam)
        let round = WorkTasks.Rounding(seam)
        from link in new[] { new WorkLink(Id(seam), round, "the seam draws it out of round") }
            .Concat(_welds.Where(weld => WorkTasks.Rounding(weld) != round && weld.Between.Intersect(seam.Between).Any())
                .Select(weld => new WorkLink(round, Id(weld), "it must be round before anything is fitted to it")))
            .Concat(_design.All<DividerSpec>().Where(disc => InternalHost.Ids(disc, _design).Intersect(seam.Between).Any())
                .Select(disc => new WorkLink(round, WorkTask.Fitting(disc.Path), "it must be round before anything is fitted to it")))
        select link;

    /// <summary>A shell of several courses is one before anything is fitted to it.</summary>
    private IEnumerable<WorkLink> Girths()
    {
        var parts = Names.ShellParts(_design);
        return from girth in _welds.Where(weld => weld.Role == WeldRole.GirthSeam)
               from after in _welds
                   .Where(weld => weld.Role is not (WeldRole.GirthSeam or WeldRole.LongSeam) && weld.Between.Any(parts.Contains)).Select(Id)
                   .Concat(_design.All<DividerSpec>().Where(disc => disc.Fits is null).Select(disc => WorkTask.Fitting(disc.Path)))
               select new WorkLink(Id(girth), after, "the shell is whole and straight before anything is fitted to it");
    }

    /// <summary>What stands over a head's seam waits for that; over the closing one it comes after all but the tests.</summary>
    private IEnumerable<WorkLink> OverSeams() =>
        from over in _sites
        where over.Over is not null
        let end = over.Over!.Value
        from task in Tasks(over.Port)
        from link in new[]
        {
            new WorkLink(Closes(end), task, "its hole is made through the finished seam"),
            end == _closing
                ? new WorkLink(task, WorkTask.Testing, "it must be closed")
                : new WorkLink(task, Closes(_closing), "its root and lip are reached from the open end"),
        }
        select link;

    private IEnumerable<string> Tasks(PortDesign port) =>
        [At(WeldRole.PortSeam, port.Path), WorkTask.Chasing(port.Path), WorkTask.Dressing(port.Path)];

    /// <summary>Order on the shell: ports and discs while both ends are open; the bracket before it is closed.</summary>
    private IEnumerable<WorkLink> Shell() =>
        from first in _sites.Where(site => site.Port.Host == PortHost.Shell && site.Over is null).Select(site => site.Port)
            .SelectMany(Tasks)
            .Concat(_design.All<DividerSpec>().Where(disc => disc.Fits is null && !ShutsIn(disc)).Select(Hold))
        from head in Ends().Select(Closes)
        select new WorkLink(first, head, "its root and lip are reached from the open ends");

    /// <summary>
    /// Whether a disc of the shell is put in after the end whose tube passes into a packing: it shuts that packing in, or lies further from
    /// that end.
    /// </summary>
    private bool ShutsIn(DividerSpec disc) => disc.Fits is null && _design.All<PackingDesign>().Any(packing =>
        PackingRoom.EnteredFrom(packing, _design, _sites) is { } from && from != _closing
        && PackingRoom.Shutting(packing, _design, _sites) is { Fits: null } last
        && (from == VesselEnd.Top ? disc.Height <= last.Height : disc.Height >= last.Height));

    /// <summary>What stands in a head is welded to it before it closes the shell, whatever else its kind asks for.</summary>
    private IEnumerable<WorkLink> Heads(ImmutableArray<Head> heads, Welds numbered)
    {
        foreach (var head in heads)
        {
            var seam = Closes(head.End);
            foreach (var port in _design.Ports.Where(port => port.End == head.End))
                yield return new(At(WeldRole.PortSeam, port.Path), seam, "both sides of a loose head are in reach");
            foreach (var link in head.Links(numbered))
                yield return link;
        }
    }

    private IEnumerable<WorkLink> Inside()
    {
        // What is held by a head, or by a tube that passes through it, goes in with that head.
        var hanging = _design.All<HangingSpec>().ToList();
        foreach (var one in hanging)
        {
            if (one.Carrier is { } outlet)
                yield return new(Hold(one), At(WeldRole.PortSeam, _design.Ports.Single(p => p.Name == outlet).Path),
                    "between lid and plate there is no room for a torch");
            yield return new(Hold(one), Closes(one.HangsFrom), "it goes in with its head");
        }

        // A port that carries something waits for that.
        var held = hanging.Where(one => one.Carrier is null).ToList();
        var bare = _design.Ports.Where(port => !hanging.Exists(other => other.Carrier == port.Name));
        foreach (var (one, port) in Pairs(held, bare, (one, port) => port.End == one.HangsFrom))
            yield return new(At(WeldRole.PortSeam, port.Path), Hold(one), "its root is reached from both sides of a bare head");

        // Each is welded on its outside, so what is narrower comes first.
        foreach (var (narrow, wide) in Pairs(held, held, (a, b) => a.HangsFrom == b.HangsFrom && a.OutsideDiameter < b.OutsideDiameter))
            yield return new(Hold(narrow), Hold(wide), "it is welded on its outside, which the wider one hides");

        foreach (var (tube, disc) in Pairs(hanging, _design.All<DividerSpec>(), (tube, disc) => disc.Fits == tube.Name))
        {
            yield return ShutsInTube(disc, tube)
                ? new(Hold(disc), Closes(tube.HangsFrom), "it goes in with its head")
                : new(Hold(disc), Hold(tube), "its bead is reached from the sleeve's open end");
        }

        foreach (var link in Discs().Concat(Packings()))
            yield return link;
    }

    /// <summary>Whether a disc of a sleeve is put in after a packing that a tube beside it passes into.</summary>
    private bool ShutsInTube(DividerSpec disc, HangingSpec sleeve) => _design.All<PackingDesign>().Any(packing =>
        PackingRoom.Through(packing, _design, _sites) is not null && PackingRoom.Shutting(packing, _design, _sites) is { } last
            && last.Fits == sleeve.Name
        && (sleeve.HangsFrom == VesselEnd.Top ? disc.Height <= last.Height : disc.Height >= last.Height));

    /// <summary>Order of the discs: in one bore the one that lies furthest from the end that stays open comes first.</summary>
    private IEnumerable<WorkLink> Discs()
    {
        var discs = _design.All<DividerSpec>();
        foreach (var (lower, upper) in Pairs(discs, discs, (a, b) => a.Fits == b.Fits && a.Height < b.Height))
        {
            var (first, then) = PackingRoom.IsFilledFromBelow(lower.Fits, _design, _sites) ? (upper, lower) : (lower, upper);
            yield return new(Hold(first), Hold(then), "it would be hidden by the next one");
        }
    }

    /// <summary>A packing lies on the first of its discs, round the tubes that pass into it; the other disc shuts it in.</summary>
    private IEnumerable<WorkLink> Packings()
    {
        foreach (var packing in _design.All<PackingDesign>())
        {
            var (stuffing, last) = (WorkTask.Fitting(packing.Path), PackingRoom.Shutting(packing, _design, _sites));
            var discs = _design.All<DividerSpec>().Where(disc => disc.Name == packing.Lower || disc.Name == packing.Upper).ToList();
            foreach (var disc in discs)
            {
                var task = Hold(disc);
                yield return disc == last ? new(stuffing, task, "this disc shuts it in") : new(task, stuffing, "it lies against this disc");
            }

            foreach (var end in Ends())
            {
                var head = Closes(end);
                yield return end != _closing && discs.Exists(ShutsIn)
                    ? new(head, stuffing, "it is laid round the tube that passes into it")
                    : new(stuffing, head, "it goes in while there is a way");
            }

            if (PackingRoom.Through(packing, _design, _sites) is { } && last?.Fits is { } name
                && InternalHost.Tube(name, _design) is { } host)
                yield return new(Hold(host), stuffing, "it is laid round the tube that passes into it");
            foreach (var site in _sites.Where(site => PackingRoom.IsReached(packing, site, _design)))
                yield return new(At(WeldRole.PortSeam, site.Port.Path), stuffing, "it is laid round the tube that passes into it");
        }
    }

    /// <summary>The closing seam after everything but test and finish, over a clean inside.</summary>
    private IEnumerable<WorkLink> Closing(ImmutableArray<WorkTask> tasks)
    {
        var closing = Closes(_closing);
        var late = _sites.Where(site => site.Over == _closing).SelectMany(site => Tasks(site.Port)).Append(closing).ToHashSet();
        foreach (var task in tasks.Where(task => task.Kind is not (WorkKind.Clean or WorkKind.Test or WorkKind.Finish)
            && task.Rank <= WorkRank.Test && !late.Contains(task.Id)))
            yield return new(task.Id, WorkTask.Cleaning, "a closed can traps swarf");
        yield return new(WorkTask.Cleaning, closing, "a closed can traps swarf");
        yield return new(closing, WorkTask.Testing, "it must be closed");
        yield return new(WorkTask.Testing, WorkTask.Finishing, "a leak is welded before it is finished");
    }

    /// <summary>All of the first with all of the second that a condition holds for.</summary>
    private static IEnumerable<(TOne, TOther)> Pairs<TOne, TOther>(
        IEnumerable<TOne> first, IEnumerable<TOther> second, Func<TOne, TOther, bool> holds) =>
        from one in first from other in second where holds(one, other) select (one, other);

    private static VesselEnd[] Ends() => [VesselEnd.Top, VesselEnd.Bottom];

    /// <summary>The task that closes an end.</summary>
    private string Closes(VesselEnd end) => _closes[end];

    /// <summary>The one task that holds something inside.</summary>
    private string Hold(InsideSpec held) => held.IsWelded ? At(WeldRole.Hold, held.Path) : WorkTask.Fitting(held.Path);

    /// <summary>The task of the one weld of a role that belongs to a mapping; an id that no task has where there is none.</summary>
    private string At(WeldRole role, string owner) => All(role, owner).FirstOrDefault() ?? $"no {role} at {owner}";

    private IEnumerable<string> All(WeldRole role, string owner) =>
        _welds.Where(weld => weld.Role == role && weld.Owner == owner).Select(Id);

    private static string Id(Joint weld) => WorkTask.Welding(weld.Number);
}
