using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>
/// The mock-up as one solid whose faces share edges: the outside profile turned about the axis less the footprints, each
/// attached part from its footprint outward, and the room inside less the bores.
/// </summary>
internal static class MockupSolid
{
    /// <summary>Solid of a plan without obstacles.</summary>
    public static Solid Of(MockupPlan plan)
    {
        var faces = ImmutableArray.CreateBuilder<Face>();
        var (onOutside, onInside) = (ImmutableArray.CreateBuilder<Opening>(), ImmutableArray.CreateBuilder<Opening>());
        foreach (var port in plan.Ports)
            AddPort(port, faces, onOutside, onInside);
        foreach (var drain in plan.Drains)
        {
            var (outer, inner) = (EdgeOf(drain.Outside), EdgeOf(drain.Inside));
            onOutside.Add(Opened([outer], drain.Outside, drain.Angle));
            onInside.Add(Opened([inner], drain.Inside, drain.Angle));
            faces.Add(new SideFace(outer, inner));
        }

        foreach (var member in plan.Members)
        {
            var (own, feet) = member.Build(plan.Outside);
            faces.AddRange(own);
            onOutside.AddRange(feet.Zip(member.Feet(plan.Outside), (edges, foot) => Opened(edges, foot, member.Angle)));
        }

        foreach (var (own, opening) in plan.Marks.SelectMany(mark => mark.Reliefs).Select(relief => relief.Build()))
        {
            faces.AddRange(own);
            onOutside.Add(opening);
        }

        faces.AddRange(TurnedFaces.Of(plan.Outside, onOutside.ToImmutable(), true));
        if (plan.Inside is { } inside)
            faces.AddRange(TurnedFaces.Of(inside, onInside.ToImmutable(), false));
        return new(faces.ToImmutable());
    }

    private static void AddPort(
        PortForm port,
        ImmutableArray<Face>.Builder faces,
        ImmutableArray<Opening>.Builder onOutside,
        ImmutableArray<Opening>.Builder onInside)
    {
        var last = EdgeOf(port.Outside);
        onOutside.Add(Opened([last], port.Outside, port.Angle));
        var from = double.NegativeInfinity;
        foreach (var ring in port.Rings)
        {
            Run([.. port.Mitres(ring.U, from, ring.V), port.Ring(ring)]);
            from = ring.V;
        }

        if (port.Bore is { } bore)
        {
            var end = EdgeOf(bore);
            onInside.Add(Opened([end], bore, port.Angle));
            Run([.. port.Mitres(port.Rings[^1].U, from, double.NegativeInfinity), end]);
        }
        else
        {
            var plane = port.FrameAt(port.Rings[^1].V);
            faces.Add(
                new Skin(new PlaneSurface(plane), [new(last, t => plane.ToLocal(last.At(t)) is var at ? new(at.X, at.Y) : default)], true));
        }

        void Run(ImmutableArray<Edge3> edges)
        {
            foreach (var next in edges)
            {
                faces.Add(new SideFace(last, next));
                last = next;
            }
        }
    }

    private static Edge3 EdgeOf(Imprint print) => new(print.At, print.Section.Domain, print.Section.Breaks);

    private static Opening Opened(ImmutableArray<Edge3> edges, Imprint print, double angle) =>
        new(edges, Footmark.Of(print, _ => print)!.Taken, angle);
}
