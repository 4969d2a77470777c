using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Ports;

namespace Vessel.Ports;

/// <summary>Holes that run into each other; reported at the later of the two ports.</summary>
internal static class OverlapCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, IReadOnlyList<ShellHole> holes) =>
        OnShell(design.Shell, holes).Concat(OnHeads(design)).Concat(OverSeams(design));

    private static IEnumerable<Fault> OnShell(ShellDesign shell, IReadOnlyList<ShellHole> holes)
    {
        // The outside spread on a cylinder repeats every girth, so a neighbour may lie across its edge.
        var girth = Turns.Full * shell.OuterRadius;
        var flats = holes.Select(h => h.Flat(shell.OuterRadius)).ToList();
        var repeats = holes.Select(h => new[] { -girth, 0, girth }.SelectMany(shift => h.Flat(shell.OuterRadius, shift)).ToList()).ToList();
        for (var later = 1; later < holes.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                if (flats[later].Any(a => repeats[earlier].Any(a.Intersects)))
                {
                    yield return new Fault(FaultCodes.HolesOverlap, $"{holes[later].Port.Path}.at",
                        $"The holes of '{holes[earlier].Port.Name}' and '{holes[later].Port.Name}' run into each other.",
                        null, null, "Move one of the two along the shell or round it, or make one smaller.");
                }
            }
        }
    }

    private static Point2 Axis(PortDesign port) => Point2.Polar(port.Place.Radius, port.Place.Angle);

    /// <summary>A cone's tip is cut square to its sheet, so that outside it is wider than a tube that passes.</summary>
    private static double HoleInPlan(VesselDesign design, PortDesign port) => ShellHole.HoleRadius(port)
        + (port is { Place.Radius: 0, Joint: PortJoint.SetIn } ? design.Head(port.Host).TipEdge : 0);

    /// <summary>On either face, spread out round the pole.</summary>
    private static bool RunTogether(HeadShape shape, PortDesign a, PortDesign b)
    {
        if (HeadFooting.Of(shape, a) is not { } first || HeadFooting.Of(shape, b) is not { } second)
            return false;
        var (r, s) = (ShellHole.HoleRadius(a), ShellHole.HoleRadius(b));
        return first.Takes(r, r) && second.Takes(s, s)
            && (Spread(shape.Outer, first.Round(first.Outside, r)).Intersects(Spread(shape.Outer, second.Round(second.Outside, s)))
                || Spread(shape.Inner, first.Round(first.Inside, r)).Intersects(Spread(shape.Inner, second.Round(second.Inside, s))));
    }

    /// <summary>Ports of the shell that stand over a head's seam, against those of the head.</summary>
    private static IEnumerable<Fault> OverSeams(VesselDesign design) =>
        from seam in OverSeam.All(design)
        let over = seam.Port
        let end = seam.End
        from port in design.Ports.Where(port => port.Host == end)
        where HeadShape.Of(end, design) is { } shape && RunTogether(shape, ShellFooting.Of(design, over), over, port)
        select new Fault(FaultCodes.HolesOverlap, $"{port.Path}.at",
            $"The holes of '{over.Name}', which stands over the seam, and '{port.Name}' run into each other.", null, null,
            "Move one of the two, or make one smaller.");

    /// <summary>What lies beyond the head's edge is drawn to it, where no port of the head comes.</summary>
    private static bool RunTogether(HeadShape shape, ShellFooting over, PortDesign a, PortDesign b)
    {
        if (HeadFooting.Of(shape, b) is not { } second)
            return false;
        var (r, s) = (ShellHole.HoleRadius(a), ShellHole.HoleRadius(b));
        IEnumerable<Vector3> Round(Footprint face) => BranchAxis.Phis().Select(phi => shape.Frame.ToLocal(over.At(face, r, phi)));
        return over.Outside.Takes(r) && over.Inside.Takes(r) && second.Takes(s, s)
            && (Spread(shape.Outer, Round(over.Outside)).Intersects(Spread(shape.Outer, second.Round(second.Outside, s)))
                || Spread(shape.Inner, Round(over.Inside)).Intersects(Spread(shape.Inner, second.Round(second.Inside, s))));
    }

    private static Polygon Spread(Profile face, IEnumerable<Vector3> outline)
    {
        var surface = new RevolvedSurface(face);
        var points = outline.Select(surface.ChartOf).Select(at => new Coordinate(at.U, at.V)).ToList();
        return new(new LinearRing([.. points, points[0]]));
    }

    private static IEnumerable<Fault> OnHeads(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        for (var later = 1; later < design.Ports.Length; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                var (a, b) = (design.Ports[earlier], design.Ports[later]);
                if (a.Host != b.Host || a.Host == PortHost.Shell)
                    continue;
                if (InsideBodies.Leans(design, a) || InsideBodies.Leans(design, b))
                {
                    if (HeadShape.Of(a.Host, design) is { } shape && RunTogether(shape, a, b))
                    {
                        yield return new Fault(FaultCodes.HolesOverlap, $"{b.Path}.at",
                            $"The holes of '{a.Name}' and '{b.Name}' run into each other.", null, null,
                            "Move one of the two, or make one smaller.");
                    }

                    continue;
                }

                var apart = (Axis(a) - Axis(b)).Length;
                var need = HoleInPlan(design, a) + HoleInPlan(design, b);
                if (apart < need)
                {
                    yield return new Fault(FaultCodes.HolesOverlap, $"{b.Path}.at",
                        $"The holes of '{a.Name}' and '{b.Name}' run into each other.",
                        $"{shown.Length(apart)} between axes", $"at least {shown.LengthUp(need)}",
                        "Move one of the two, or make one smaller.");
                }
            }
        }
    }
}
