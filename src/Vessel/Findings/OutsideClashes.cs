using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Findings;

/// <summary>Two things on the outside that should not touch.</summary>
/// <param name="Path">Path of the later one in the file.</param>
/// <param name="Distance">Holds the true one, mm; zero at both ends where they run into each other.</param>
internal sealed record OutsideClash((string Id, string Name) One, (string Id, string Name) Other, string Path, Interval Distance);

/// <summary>
/// What stands on the outside and comes too near to something else in the air: tubes, bungs and fittings, brackets, straps, the rim of a
/// head that stands out. How near they come on the vessel itself is asked by their welds.
/// </summary>
/// <remarks>
/// A tube is a bar from the highest place of its foot outward, and lines of its surface from there down to the foot, so close that
/// they lie within <see cref="Strand"/> of it all round; brackets are convex bodies, whose bends bulge by what they say.
/// </remarks>
internal static class OutsideClashes
{
    /// <summary>Distances are told below this, mm: common practice, no source.</summary>
    public const double Least = 1;

    /// <summary>Bodies further apart take no part in a distance below <see cref="Least"/>, whose bracket is far narrower, mm.</summary>
    private const double Beyond = 2 * Least;

    /// <summary>What the lines of a tube's foot leave of its surface, mm.</summary>
    private const double Strand = 0.02;

    public static IEnumerable<OutsideClash> Of(Assembly assembly)
    {
        List<OutsideBody> all =
        [
            .. assembly.Sites.Select(site => OfPort(site, assembly.Mockup.Outside)).OfType<OutsideBody>(),
            .. assembly.Members.Select(member => member.Outside).OfType<OutsideBody>(),
            .. Rims(assembly),
        ];
        foreach (var site in assembly.Sites.Where(site => site.Port.Elbow is not null))
        {
            var away = Math.Max(0, TubeBodies.ElbowFromVessel(assembly.Mockup.Outside, site));
            if (away < Least)
            {
                yield return new(
                    (Slug.Of(site.Port.Name), site.Port.Name), (Names.Of(site.Port.Host), "the vessel"), site.Port.Elbow!.Path,
                    new(Math.Max(0, away - Strand), away));
            }
        }

        for (var later = 1; later < all.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                var (a, b) = (all[earlier], all[later]);
                if (a.OnRim == b.Id || b.OnRim == a.Id || a.Around.DistanceTo(b.Around) > Least)
                    continue;
                if (Between(a, b, Beyond) is { } distance && distance.Start < Least)
                    yield return new((a.Id, a.Name), (b.Id, b.Name), b.Path ?? a.Path!, distance);
            }
        }
    }

    /// <summary>Between the bodies of both, mm; null where none come so near.</summary>
    internal static Interval? Between(OutsideBody a, OutsideBody b, double within = double.PositiveInfinity)
    {
        Interval? least = null;
        var (balls, others) = (a.Balls(), b.Balls());
        for (var i = 0; i < balls.Length; i++)
        {
            for (var j = 0; j < others.Length; j++)
            {
                var slack = a.Bodies[i].Slack + b.Bodies[j].Slack;
                if (balls[i].DistanceTo(others[j]) - slack > Math.Min(within, least?.End ?? double.PositiveInfinity))
                    continue;
                var found = ConvexDistance.Between(a.Bodies[i].Body, b.Bodies[j].Body);
                var distance = new Interval(Math.Max(0, found.Start - slack), found.End);
                // The least of intervals is the interval of the least ends.
                least = least is { } known ? new(Math.Min(known.Start, distance.Start), Math.Min(known.End, distance.End)) : distance;
                if (least is { End: 0 })
                    return least;
            }
        }

        return least;
    }

    /// <summary>Null where a line of its surface misses the vessel.</summary>
    internal static OutsideBody? OfPort(PortSite site, Profile outside)
    {
        var (port, frame) = (site.Port, site.Frame);
        var radius = port.OuterRadius;
        var lines = Math.Max(36, (int)Math.Ceiling(Math.PI / Math.Acos(1 - Math.Min(1, Strand / radius))));
        if (new Imprint(outside, frame, LoopPath.Of(Loop2.Circle(default, radius))).Place(lines) is not { } foot)
            return null;
        var top = Math.Min(foot.Reach.End, port.WholeLength - Strand);
        var fitting = FittingEnvelope.Of(port);
        ImmutableArray<ConvexBody> nut = fitting is null ? []
            : [new Bar(site.FreeEnd.Origin, site.FreeEnd.ToOuter(new(0, 0, fitting.Length)), fitting.Radius)];
        var bodies = ImmutableArray.CreateBuilder<(ConvexBody, double)>();
        bodies.AddRange(TubeBodies.Of(site, radius, top).Concat(nut).Select(body => (body, 0.0)));
        foreach (var point in foot.Points)
            bodies.Add((new Hull([point, point + ((top - (point - frame.Origin).Dot(frame.Z)) * frame.Z)]), Strand));
        return new(
            Slug.Of(port.Name), port.Name, port.Path, bodies.ToImmutable(),
            Ball.Round([.. TubeBodies.Of(site, radius, foot.Reach.Start), .. nut]))
        {
            OnRim = port.Host == PortHost.Shell ? null : Names.Of(port.Host),
        };
    }

    /// <summary>Flat heads that stand out over the shell.</summary>
    private static IEnumerable<OutsideBody> Rims(Assembly assembly)
    {
        foreach (var end in (VesselEnd[])[VesselEnd.Top, VesselEnd.Bottom])
        {
            if (assembly.Design.Head(end).Plate is not { } head || head.OutsideDiameter <= assembly.Design.Shell.AtEnd(end).OutsideDiameter)
                continue;
            var frame = HeadSite.Of(end, assembly.Design).Frame;
            var plate = new Bar(frame.Origin, frame.ToOuter(new(0, 0, head.Wall)), head.OutsideDiameter / 2);
            yield return new(Names.Of(end), $"the {Names.Of(end)}", null, [(plate, 0)], Ball.Round([plate]));
        }
    }
}
