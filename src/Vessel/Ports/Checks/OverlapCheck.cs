using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Holes that run into each other; reported at the later of the two ports.</summary>
internal static class OverlapCheck
{
    /// <summary>Round a hole in a head.</summary>
    private const int Lines = 120;

    /// <summary>Round a hole that has a corner where it runs over a seam.</summary>
    private const int LinesOverSeam = 720;

    public static IEnumerable<Fault> Find(PortSites sites) => OnShell(sites.Design.Shell, sites.Openings).Concat(InHeads(sites));

    /// <summary>Holes in a head, with those of the shell that reach over its seam.</summary>
    internal static IEnumerable<Fault> InHeads(PortSites sites) => OnHeads(sites).Concat(OverSeams(sites));

    private static IEnumerable<Fault> OnShell(ShellDesign shell, ImmutableArray<ShellOpening> openings)
    {
        // The outside spread on a cylinder repeats every girth, so a neighbour may lie across its edge.
        var girth = Turns.Full * shell.OuterRadius;
        var flats = openings.Select(hole => hole.Flat(shell.OuterRadius)).ToList();
        var repeats = openings
            .Select(hole => new[] { -girth, 0, girth }.SelectMany(shift => hole.Flat(shell.OuterRadius, shift)).ToList()).ToList();
        for (var later = 1; later < openings.Length; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                if (flats[later].Any(a => repeats[earlier].Any(a.Intersects)))
                {
                    yield return new Fault(FaultCodes.HolesOverlap, $"{openings[later].Port.Path}.at",
                        $"The holes of '{openings[earlier].Port.Name}' and '{openings[later].Port.Name}' run into each other.",
                        null, null, "Move one of the two along the shell or round it, or make one smaller.");
                }
            }
        }
    }

    private static Point2 Axis(PortDesign port) => Point2.Polar(port.Place.Radius, port.Place.Angle);

    /// <summary>A cone's tip is cut square to its sheet, so that outside it is wider than a tube that passes.</summary>
    private static double HoleInPlan(VesselDesign design, PortDesign port) => port.HoleRadius
        + (port is { Place.Radius: 0, Joint: PortJoint.SetIn } ? design.Head(port).TipEdge : 0);

    /// <summary>
    /// On either face, spread out round the pole. What lies beyond the head's edge is drawn to it, where no port of the head comes.
    /// </summary>
    private static bool RunTogether(HeadShape shape, PortSite a, PortSite b)
    {
        return MeetsAllRound(a) && MeetsAllRound(b)
            && (Spread(shape.Outer, a, a.Outside).Intersects(Spread(shape.Outer, b, b.Outside))
                || Spread(shape.Inner, a, a.Inside).Intersects(Spread(shape.Inner, b, b.Inside)));

        static bool MeetsAllRound(PortSite site) => site.Outside.Takes(site.OpeningRadius) && site.Inside.Takes(site.OpeningRadius);

        Polygon Spread(Profile face, PortSite site, Footprint on)
        {
            var surface = new RevolvedSurface(face);
            var points = site.Round(on, site.OpeningRadius, site.OnShell is null ? Lines : LinesOverSeam)
                .Select(at => surface.ChartOf(shape.Frame.ToLocal(at))).Select(at => new Coordinate(at.U, at.V)).ToList();
            return new(new LinearRing([.. points, points[0]]));
        }
    }

    /// <summary>Ports of the shell that stand over a head's seam, against those of the head.</summary>
    private static IEnumerable<Fault> OverSeams(PortSites sites) =>
        from over in sites.Found
        where over.Over is not null
        from site in sites.Found
        where site.Port.End == over.Over && RunTogether(sites.Shape(over.Over!.Value)!, over, site)
        select new Fault(FaultCodes.HolesOverlap, $"{site.Port.Path}.at",
            $"The holes of '{over.Port.Name}', which stands over the seam, and '{site.Port.Name}' run into each other.", null, null,
            "Move one of the two, or make one smaller.");

    private static bool Leans(PortStand stand) => stand.Site?.Leans ?? stand.Port.Place is { SquareToSurface: true, Radius: > 0 };

    private static IEnumerable<Fault> OnHeads(PortSites sites)
    {
        var (shown, design, sited) = (new UnitFormat(sites.Design.Units), sites.Design, sites.All);
        for (var later = 1; later < sited.Length; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                var (a, b) = (sited[earlier].Port, sited[later].Port);
                if (a.Host != b.Host || a.Host == PortHost.Shell)
                    continue;
                if (Leans(sited[earlier]) || Leans(sited[later]))
                {
                    if (sited[earlier].Site is { } first && sited[later].Site is { } second
                        && RunTogether(sites.Shape(a.End!.Value)!, first, second))
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
