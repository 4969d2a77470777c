using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Planning;

/// <summary>Order constraints between tasks, and why; common practice, no source, where no reason of geometry stands behind it.</summary>
internal sealed class OrderRules
{
    private readonly VesselDesign _design;
    private readonly ImmutableArray<Joint> _welds;
    private readonly ImmutableHashSet<string> _ids;

    private OrderRules(VesselDesign design, ImmutableArray<Joint> welds, ImmutableArray<WorkTask> tasks)
    {
        (_design, _welds) = (design, welds);
        _ids = [.. tasks.Select(task => task.Id)];
    }

    public static ImmutableArray<WorkLink> Of(
        VesselDesign design, ImmutableArray<Member> members, ImmutableArray<Joint> welds, ImmutableArray<WorkTask> tasks)
    {
        var rules = new OrderRules(design, welds, tasks);
        ImmutableArray<WorkLink> links =
        [
            .. new[] { Parts(tasks), rules.Rolled(), rules.Girths(), rules.Shell(), rules.OverSeams(), rules.Heads(), rules.Ports(), rules.Inside(), rules.Closing(tasks), members.SelectMany(member => member.Links) }
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
        from seam in _welds.Where(weld => weld.Role is WeldRole.LongSeam or WeldRole.SkirtSeam)
        let round = WorkTasks.Rounding(seam)
        from link in new[] { new WorkLink(Id(seam), round, "the seam draws it out of round") }
            .Concat(_welds.Where(weld => WorkTasks.Rounding(weld) != round && weld.Between.Intersect(seam.Between).Any())
                .Select(weld => new WorkLink(round, Id(weld), "it must be round before anything is fitted to it")))
            .Concat(_design.Inside.Discs.Where(disc => InternalHost.Ids(disc, _design).Intersect(seam.Between).Any())
                .Select(disc => new WorkLink(round, WorkTasks.Fitting(disc.Path), "it must be round before anything is fitted to it")))
        select link;

    /// <summary>A shell of several courses is one before anything is fitted to it.</summary>
    private IEnumerable<WorkLink> Girths()
    {
        var parts = Names.ShellParts(_design);
        return from girth in _welds.Where(weld => weld.Role == WeldRole.GirthSeam)
               from after in _welds.Where(weld => weld.Role is not (WeldRole.GirthSeam or WeldRole.LongSeam) && weld.Between.Any(parts.Contains)).Select(Id)
                   .Concat(_design.Inside.Discs.Where(disc => disc.Fits is null).Select(disc => WorkTasks.Fitting(disc.Path)))
               select new WorkLink(Id(girth), after, "the shell is whole and straight before anything is fitted to it");
    }

    /// <summary>What stands over a head's seam waits for that; over the closing one it comes after all but the tests.</summary>
    private IEnumerable<WorkLink> OverSeams() =>
        from over in OverSeam.All(_design)
        let end = over.End
        from task in Tasks(over.Port)
        from link in new[]
        {
            new WorkLink(At(_design.Head(end).Path), task, "its hole is made through the finished seam"),
            end == WorkTasks.ClosingEnd(_design)
                ? new WorkLink(task, WorkTask.Testing, "it must be closed")
                : new WorkLink(task, At(_design.Head(WorkTasks.ClosingEnd(_design)).Path), "its root and lip are reached from the open end"),
        }
        select link;

    private IEnumerable<string> Tasks(PortDesign port) => [At(port.Path), WorkTasks.Chasing(port), WorkTasks.Dressing(port)];

    /// <summary>On the shell: ports and discs while both ends are open; the bracket before it is closed.</summary>
    private IEnumerable<WorkLink> Shell() =>
        from first in _design.Ports.Where(port => port.Host == PortHost.Shell && OverSeam.Of(_design, port) is null)
            .SelectMany(Tasks)
            .Concat(_design.Inside.Discs.Where(disc => disc.Fits is null && !ShutsIn(disc)).SelectMany(Held))
        from head in Ends().Select(end => At(_design.Head(end).Path))
        select new WorkLink(first, head, "its root and lip are reached from the open ends");

    /// <summary>
    /// Whether a disc of the shell is put in after the end whose tube passes into a packing: it shuts that packing in, or lies further from that end.
    /// </summary>
    private bool ShutsIn(DiscDesign disc) => disc.Fits is null && _design.Inside.Packings.Any(packing =>
        PackingRoom.EnteredFrom(packing, _design) is { } from && from != WorkTasks.ClosingEnd(_design)
        && PackingRoom.Shutting(packing, _design) is { Fits: null } last
        && (from == PortHost.Top ? disc.Height <= last.Height : disc.Height >= last.Height));

    /// <summary>A head is whole before it closes the shell.</summary>
    private IEnumerable<WorkLink> Heads()
    {
        foreach (var end in Ends())
        {
            var (head, seam) = (_design.Head(end), At(_design.Head(end).Path));
            var ports = _design.Ports.Where(port => port.Host == end).ToList();
            foreach (var port in ports)
                yield return new(At(port.Path), seam, "both sides of a loose head are in reach");
            if (head is ConeHead { Segments: > 1 } cone)
            {
                foreach (var own in Enumerable.Range(0, cone.Segments).Select(i => At(WeldNumbers.ConeSeam(cone, i))))
                {
                    foreach (var port in ports)
                        yield return new(own, At(port.Path), "the cone is whole before anything is fitted to it");
                    yield return new(own, seam, "the cone is whole before it is fitted");
                }
            }

            if (head is not DishedHead { Gores: { } gores })
                continue;
            var crown = At(WeldNumbers.CapSeam(gores));
            foreach (var port in ports)
            {
                yield return GorePorts.IsInCap(port, _design) ? new(At(port.Path), crown, "both sides of a loose cap are in reach")
                    : new(crown, At(port.Path), "the head is whole before it is drilled");
            }

            for (var i = 0; i < gores.Count; i++)
                yield return new(At(WeldNumbers.GoreSeam(gores, i)), crown, "the cap closes the hole between the gores");
            yield return new(crown, seam, "the head is whole before it is fitted");
        }
    }

    private IEnumerable<WorkLink> Ports()
    {
        foreach (var port in _design.Ports)
        {
            yield return new(WorkTasks.FittingOn(port), At(port.Path), "on the bench it turns freely");
            if (port.Elbow is { } elbow)
            {
                for (var i = 0; i < elbow.Mitres; i++)
                    yield return new(At(WeldNumbers.Mitre(elbow, i)), At(port.Path), "on the bench it turns freely, and its root is seen from both ends");
            }

            yield return new(WorkTasks.Plugging(port), At(port.Path), "heat and spatter spoil a bare thread");
            yield return new(At(port.Path), WorkTasks.Chasing(port), "a thread draws in as the bead cools");
            yield return new(At(port.Path), WorkTasks.Dressing(port), "the lip is dressed with the bead");
        }
    }

    private IEnumerable<WorkLink> Inside()
    {
        var inside = _design.Inside;
        foreach (var cap in inside.Caps)
        {
            yield return new(At(WeldNumbers.Rim(cap.Path)), At(WeldNumbers.Fixing(cap.Path)), "the cup is whole before it hangs");
            if (cap.Outlet is { } outlet)
            {
                var port = _design.Ports.Single(p => p.Name == outlet);
                yield return new(At(WeldNumbers.Fixing(cap.Path)), At(port.Path), "between lid and plate there is no room for a torch");
            }

            yield return new(At(WeldNumbers.Fixing(cap.Path)), At(_design.Head(cap.HangsFrom).Path), "it goes in with its head");
        }

        // A port that a cap hangs from waits for that cap.
        foreach (var (end, hold) in inside.Caps.Where(cap => cap.Outlet is null).Select(cap => (cap.HangsFrom, At(WeldNumbers.Fixing(cap.Path))))
            .Concat(inside.Sleeves.Select(sleeve => (sleeve.HangsFrom, Hold(sleeve)))))
        {
            foreach (var port in _design.Ports.Where(port => port.Host == end && !inside.Caps.Any(cap => cap.Outlet == port.Name)))
                yield return new(At(port.Path), hold, "its root is reached from both sides of a bare head");
        }

        // Each is welded on its outside, so what is narrower comes first.
        var held = inside.Caps.Where(cap => cap.Outlet is null).Select(cap => (cap.OutsideDiameter, cap.HangsFrom, Held: At(WeldNumbers.Fixing(cap.Path))))
            .Concat(inside.Sleeves.Select(sleeve => (sleeve.OutsideDiameter, sleeve.HangsFrom, Held: Hold(sleeve))))
            .ToList();
        foreach (var (narrow, wide) in from a in held from b in held where a.HangsFrom == b.HangsFrom && a.OutsideDiameter < b.OutsideDiameter select (a, b))
            yield return new(narrow.Held, wide.Held, "it is welded on its outside, which the wider one hides");

        foreach (var sleeve in inside.Sleeves)
        {
            yield return new(Hold(sleeve), At(_design.Head(sleeve.HangsFrom).Path), "it goes in with its head");
            foreach (var disc in inside.Discs.Where(disc => disc.Fits == sleeve.Name))
            {
                foreach (var task in Held(disc))
                {
                    yield return ShutsInSleeve(disc, sleeve)
                        ? new(task, At(_design.Head(sleeve.HangsFrom).Path), "it goes in with its head")
                        : new(task, Hold(sleeve), "its bead is reached from the sleeve's open end");
                }
            }
        }

        foreach (var link in Discs().Concat(Packings()))
            yield return link;
    }

    /// <summary>Whether a disc of a sleeve is put in after a packing that a tube beside it passes into.</summary>
    private bool ShutsInSleeve(DiscDesign disc, SleeveDesign sleeve) => _design.Inside.Packings.Any(packing =>
        PackingRoom.Through(packing, _design) is not null && PackingRoom.Shutting(packing, _design) is { } last && last.Fits == sleeve.Name
        && (sleeve.HangsFrom == PortHost.Top ? disc.Height <= last.Height : disc.Height >= last.Height));

    /// <summary>In one bore the disc that lies furthest from the end that stays open comes first.</summary>
    private IEnumerable<WorkLink> Discs()
    {
        var discs = _design.Inside.Discs;
        foreach (var (lower, upper) in from a in discs from b in discs where a.Fits == b.Fits && a.Height < b.Height select (a, b))
        {
            var (first, then) = PackingRoom.IsFilledFromBelow(lower.Fits, _design) ? (upper, lower) : (lower, upper);
            foreach (var held in Held(first))
                yield return new(held, Held(then).First(), "it would be hidden by the next one");
        }
    }

    /// <summary>A packing lies on the first of its discs, round the tubes that pass into it; the other disc shuts it in.</summary>
    private IEnumerable<WorkLink> Packings()
    {
        var inside = _design.Inside;
        foreach (var packing in inside.Packings)
        {
            var (stuffing, last) = (WorkTasks.Fitting(packing.Path), PackingRoom.Shutting(packing, _design));
            var discs = inside.Discs.Where(disc => disc.Name == packing.Lower || disc.Name == packing.Upper).ToList();
            foreach (var disc in discs)
            {
                var task = Held(disc).First();
                yield return disc == last ? new(stuffing, task, "this disc shuts it in") : new(task, stuffing, "it lies against this disc");
            }

            foreach (var end in Ends())
            {
                var head = At(_design.Head(end).Path);
                yield return end != WorkTasks.ClosingEnd(_design) && discs.Exists(ShutsIn)
                    ? new(head, stuffing, "it is laid round the tube that passes into it")
                    : new(stuffing, head, "it goes in while there is a way");
            }

            if (PackingRoom.Through(packing, _design) is { } && last?.Fits is { } name && inside.Sleeves.FirstOrDefault(sleeve => sleeve.Name == name) is { } host)
                yield return new(Hold(host), stuffing, "it is laid round the tube that passes into it");
            foreach (var port in _design.Ports.Where(port => port.Host == PortHost.Shell && PackingRoom.IsReached(packing, port, _design)))
                yield return new(At(port.Path), stuffing, "it is laid round the tube that passes into it");
        }
    }

    /// <summary>The closing seam after everything but test and finish, over a clean inside.</summary>
    private IEnumerable<WorkLink> Closing(ImmutableArray<WorkTask> tasks)
    {
        var end = WorkTasks.ClosingEnd(_design);
        var closing = At(_design.Head(end).Path);
        var late = OverSeam.All(_design).Where(over => over.End == end).SelectMany(over => Tasks(over.Port)).Append(closing).ToHashSet();
        foreach (var task in tasks.Where(task => task.Kind is not (WorkKind.Clean or WorkKind.Test or WorkKind.Finish) && task.Rank <= WorkRank.Test && !late.Contains(task.Id)))
            yield return new(task.Id, WorkTask.Cleaning, "a closed can traps swarf");
        yield return new(WorkTask.Cleaning, closing, "a closed can traps swarf");
        yield return new(closing, WorkTask.Testing, "it must be closed");
        yield return new(WorkTask.Testing, WorkTask.Finishing, "a leak is welded before it is finished");
    }

    private static PortHost[] Ends() => [PortHost.Top, PortHost.Bottom];

    private string Hold(SleeveDesign sleeve) =>
        sleeve.Fixed == Fixing.Weld ? At(WeldNumbers.Fixing(sleeve.Path)) : WorkTasks.Fitting(sleeve.Path);

    /// <summary>The one task that holds a disc.</summary>
    private IEnumerable<string> Held(DiscDesign disc) =>
        [DiscSeam.IsWelded(disc) ? At(WeldNumbers.Fixing(disc.Path)) : WorkTasks.Fitting(disc.Path)];

    /// <summary>The task of the weld at that path; an id that no task has where there is none.</summary>
    private string At(string path) =>
        _welds.FirstOrDefault(weld => weld.Path == path) is { } weld ? Id(weld) : $"no weld at {path}";

    private static string Id(Joint weld) => WorkTask.Welding(weld.Number);
}
