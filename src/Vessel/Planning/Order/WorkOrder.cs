using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Planning;

/// <summary>Everything to be done, and what must come before what.</summary>
/// <param name="Tasks">Tasks in an order that keeps every link.</param>
public sealed record WorkOrder(ImmutableArray<WorkTask> Tasks, ImmutableArray<WorkLink> Links)
{
    public static WorkOrder Of(Assembly assembly) => Of(
        assembly.Design, assembly.Sites, assembly.Chamber.Heads, assembly.Members, assembly.Parts, assembly.Joints);

    internal static WorkOrder Of(
        VesselDesign design, ImmutableArray<PortSite> sites, ImmutableArray<Head> heads, ImmutableArray<Member> members,
        ImmutableArray<Part> parts, Welds joints)
    {
        ImmutableArray<WorkTask> tasks = [.. WorkTasks.Of(design, sites, heads, members, parts, joints.All)];
        return Of(tasks, OrderRules.Of(design, sites, heads, members, joints, tasks));
    }

    /// <summary>
    /// The tasks in order: of those whose forerunners are all done the lowest rank comes next, then the first of the list.
    /// </summary>
    /// <exception cref="InvalidOperationException">The links run in a circle: a bug of the rules.</exception>
    public static WorkOrder Of(ImmutableArray<WorkTask> tasks, ImmutableArray<WorkLink> links)
    {
        var place = tasks.Select((task, i) => (task.Id, i)).ToDictionary(t => t.Id, t => t.i);
        var waits = new int[tasks.Length];
        var after = tasks.Select(_ => new List<int>()).ToArray();
        foreach (var link in links)
        {
            after[place[link.Before]].Add(place[link.After]);
            waits[place[link.After]]++;
        }

        var ready = new PriorityQueue<int, (int Rank, int Place)>();
        for (var i = 0; i < tasks.Length; i++)
        {
            if (waits[i] == 0)
                ready.Enqueue(i, (tasks[i].Rank, i));
        }

        var done = ImmutableArray.CreateBuilder<WorkTask>(tasks.Length);
        while (ready.TryDequeue(out var next, out _))
        {
            done.Add(tasks[next]);
            foreach (var later in after[next].Where(later => --waits[later] == 0))
                ready.Enqueue(later, (tasks[later].Rank, later));
        }

        return done.Count == tasks.Length
            ? new(done.MoveToImmutable(), links)
            : throw new InvalidOperationException("tasks wait for each other");
    }

    /// <summary>Ids of the parts that hang together with a task's own when it is done.</summary>
    public ImmutableHashSet<string> PartsAt(WorkTask task)
    {
        var group = new Dictionary<string, ImmutableHashSet<string>>();
        ImmutableHashSet<string> Joined(WorkTask one) => one.Parts
            .Aggregate(ImmutableHashSet<string>.Empty, (all, part) => all.Union(group.GetValueOrDefault(part) ?? [part]));
        foreach (var earlier in Tasks.TakeWhile(t => t.Id != task.Id).Where(t => t.Joins))
        {
            var joined = Joined(earlier);
            foreach (var part in joined)
                group[part] = joined;
        }

        return Joined(task);
    }
}
