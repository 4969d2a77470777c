using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Mockups;

/// <summary>
/// A port as it is printed: its outside from the footprint on the vessel outward, then the rings of its end, then the bore into
/// the room inside, or a blind one where there is none.
/// </summary>
/// <param name="Rings">Circles round the axis (radius, distance along it, round an elbow too) from the free end of the outside to that of
/// the bore, and to the floor of a blind one.</param>
/// <param name="Bore">Where the bore meets the room; null when it ends at the last ring.</param>
internal sealed record PortForm(PortSite Site, ImmutableArray<Point2> Rings, Imprint Outside, Imprint? Bore)
{
    /// <summary>A narrower bore would not come out open, mm of radius.</summary>
    private const double LeastBore = 0.5;

    /// <summary>Share of the length free above the host that a blind bore takes.</summary>
    private const double BlindShare = 0.75;

    /// <summary>A shallower blind bore is left out, mm: its floor would lie as near as a layer to its rim.</summary>
    private const double LeastDepth = Obstacle.Least;

    private const double Hair = 0.01;

    public string Id => Slug.Of(Site.Port.Name);

    /// <summary>Angle round the vessel's axis about which it lies.</summary>
    public double Angle => Math.Atan2(Site.Frame.Origin.Y, Site.Frame.Origin.X);

    /// <param name="inside">Null for a mock-up without a room.</param>
    public static PortForm Of(PortSite site, Profile outside, Profile? inside, MockupDesign options)
    {
        var port = site.Port;
        var clearance = options.Clearance / options.Scale;
        // A hose is slipped over a tube, a plug into a bung.
        var outer = port.Thread is null ? Math.Max(port.OuterRadius - clearance, port.OuterRadius / 2) : port.OuterRadius;
        var wanted = port.Thread is { } thread && clearance > 0 ? (thread.MajorDiameter / 2) + clearance : port.BoreRadius;
        var bore = Math.Min(wanted, outer - options.LeastWall);
        var rings = ImmutableArray.CreateBuilder<Point2>();
        var end = site.Run;
        rings.Add(new(outer, end));
        if (FittingEnvelope.Of(port) is { } fitting)
        {
            if (fitting.Radius > outer + Hair)
                rings.Add(new(fitting.Radius, end));
            end += fitting.Length;
            rings.Add(new(Math.Max(fitting.Radius, outer), end));
        }

        // A blind bore goes down into the tube and stays outside the vessel, where nothing else can be.
        var floor = inside is null ? Floor(site, bore, end - (BlindShare * (end - Deepest(site, outer)))) : double.NegativeInfinity;
        var isOpen = bore >= LeastBore && end - floor > LeastDepth;
        if (isOpen)
            rings.Add(new(bore, end));
        if (isOpen && inside is null)
            rings.Add(new(bore, floor));
        return new(
            site, rings.ToImmutable(), new(outside, site.Frame, Circle(outer)),
            isOpen && inside is not null ? new(inside, site.Frame, Circle(bore)) : null);
    }

    /// <summary>Everything outside the vessel, and more where the footprint is deep.</summary>
    /// <param name="from">Along the axis, mm.</param>
    public ImmutableArray<ConvexBody> Bodies(double from)
    {
        var outer = Rings[0].U;
        var bodies = TubeBodies.Of(Site, outer, Math.Min(from, Site.Port.WholeLength - Hair));
        return FittingEnvelope.Of(Site.Port) is { } fitting
            ? bodies.Add(Round(Math.Max(fitting.Radius, outer), Site.Run, Site.Run + fitting.Length))
            : bodies;
    }

    /// <summary>A cylinder round the axis of the piece that <paramref name="to"/> lies in.</summary>
    public Bar Round(double radius, double from, double to)
    {
        var (leg, start) = LegAt(to);
        return new(leg.At(Math.Min(from, to - Hair) - start).Origin, leg.At(to - start).Origin, radius);
    }

    /// <summary>Frame on the axis, Z along it outward.</summary>
    public Frame3 FrameAt(double along) => LegAt(along) is var (leg, start) ? leg.At(along - start) : default;

    /// <summary>Circles round the port's axis, of the parameter of its footprint.</summary>
    public Edge3 Ring(Point2 ring) => Section(ring.U, FrameAt(ring.V), default);

    /// <summary>Where the mitres between two places of the axis cut a cylinder round it, in the order from the one to the other.</summary>
    public IEnumerable<Edge3> Mitres(double radius, double from, double to)
    {
        if (Site.Port.Elbow is not { } elbow)
            return [];
        var (legs, reached) = (Site.Legs, 0.0);
        var between = new List<Edge3>();
        foreach (var leg in legs[..^1])
        {
            reached += leg.Length;
            if (reached > Math.Min(from, to) && reached < Math.Max(from, to))
                between.Add(Section(radius, leg.End, Point2.Polar(-elbow.Slope, elbow.Direction)));
        }

        if (to < from)
            between.Reverse();
        return between;
    }

    /// <summary>
    /// Section of the cylinder round a frame's Z with the plane through its origin that rises by <paramref name="slope"/>.
    /// </summary>
    private static Edge3 Section(double radius, Frame3 frame, Point2 slope)
    {
        var circle = Circle(radius);
        return new(
            t => circle.At(t) is var at ? frame.ToOuter(new(at.U, at.V, at.Dot(slope))) : default, circle.Domain, circle.Breaks);
    }

    /// <summary>The piece that a place of the axis lies in, and where that begins.</summary>
    private (TubeLeg Leg, double Start) LegAt(double along)
    {
        var (legs, start, i) = (Site.Legs, 0.0, 0);
        for (; i + 1 < legs.Length && along >= start + legs[i].Length; i++)
            start += legs[i].Length;
        return (legs[i], start);
    }

    /// <summary>Floor of a blind bore along the axis, mm: further out where a mitre would cut through it.</summary>
    private static double Floor(PortSite site, double radius, double wanted)
    {
        var (legs, mitre) = (site.Legs, 0.0);
        foreach (var leg in legs[..^1])
        {
            mitre += leg.Length;
            var room = (site.Port.Elbow!.Slope * radius) + Obstacle.Least;
            if (Math.Abs(wanted - mitre) < room)
                wanted = mitre + room;
        }

        return wanted;
    }

    private static LoopPath Circle(double radius) => LoopPath.Of(Loop2.Circle(default, radius));

    /// <summary>
    /// Along the axis, where the host's outside comes furthest up into the tube. The tip of a cone, which its port closes, is not there.
    /// </summary>
    private static double Deepest(PortSite site, double radius) => Enumerable.Range(0, 36)
        .SelectMany(
            i => (site.AxisRadius > 0 ? [radius] : new[] { 0, radius / 2, radius }).Select(r => site.Outside.Reach(r, Turns.Full * i / 36)))
        .Where(double.IsFinite)
        .DefaultIfEmpty(0)
        .Max();
}
