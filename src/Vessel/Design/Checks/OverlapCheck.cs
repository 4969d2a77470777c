using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>Holes that run into each other; reported at the later of the two ports.</summary>
internal static class OverlapCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, IReadOnlyList<ShellHole> holes) =>
        OnShell(design.Shell, holes).Concat(OnHeads(design));

    private static IEnumerable<Fault> OnShell(ShellDesign shell, IReadOnlyList<ShellHole> holes)
    {
        // The outside laid flat repeats every girth, so a neighbour may lie across its edge.
        var girth = Turns.Full * shell.OuterRadius;
        var flats = holes.Select(h => h.Flat()).ToList();
        var repeats = holes.Select(h => h.Flat(-girth).AddRange(h.Flat()).AddRange(h.Flat(girth))).ToList();
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
                var apart = (Axis(a) - Axis(b)).Length;
                var need = ShellHole.HoleRadius(a) + ShellHole.HoleRadius(b);
                if (apart < need)
                {
                    yield return new Fault(FaultCodes.HolesOverlap, $"{b.Path}.at",
                        $"The holes of '{a.Name}' and '{b.Name}' run into each other.",
                        $"{shown.Length(apart)} between axes", $"at least {shown.Length(need)}",
                        "Move one of the two, or make one smaller.");
                }
            }
        }
    }
}
