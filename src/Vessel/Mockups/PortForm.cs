using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>
/// A port as it is printed: its outside from the footprint on the vessel outward, then the rings of its end, then the bore into
/// the room inside, or a blind one where there is none.
/// </summary>
/// <param name="Rings">Circles round the axis (radius, distance along it) from the free end of the outside to that of the bore, and
/// to the floor of a blind one.</param>
/// <param name="Bore">Where the bore meets the room; null when it ends at the last ring.</param>
internal sealed record PortForm(PortSite Site, ImmutableArray<Point2> Rings, Imprint Outside, Imprint? Bore)
{
    /// <summary>A narrower bore would not come out open, mm of radius.</summary>
    private const double LeastBore = 0.5;

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
        rings.Add(new(outer, port.Length));
        var end = port.Length;
        if (FittingEnvelope.Of(port) is { } fitting)
        {
            if (fitting.Radius > outer + Hair)
                rings.Add(new(fitting.Radius, end));
            end += fitting.Length;
            rings.Add(new(Math.Max(fitting.Radius, outer), end));
        }

        var isOpen = bore >= LeastBore;
        if (isOpen)
            rings.Add(new(bore, end));
        // A blind bore goes down into the tube and stays outside the vessel, where nothing else can be.
        if (isOpen && inside is null)
            rings.Add(new(bore, end - (0.75 * (end - Deepest(site, outer)))));
        return new(
            site, rings.ToImmutable(), new(outside, site.Frame, Circle(outer)), isOpen && inside is not null ? new(inside, site.Frame, Circle(bore)) : null);
    }

    /// <summary>Everything outside the vessel, and more where the footprint is deep.</summary>
    /// <param name="from">Along the axis, mm.</param>
    public ImmutableArray<Bar> Bars(double from)
    {
        var bars = ImmutableArray.CreateBuilder<Bar>();
        bars.Add(Round(Rings[0].U, from, Rings[0].V));
        if (FittingEnvelope.Of(Site.Port) is { } fitting)
            bars.Add(Round(Math.Max(fitting.Radius, Rings[0].U), Site.Port.Length, Site.Port.Length + fitting.Length));
        return bars.ToImmutable();
    }

    /// <summary>A cylinder round the port's axis.</summary>
    public Bar Round(double radius, double from, double to) => new(
        Site.Frame.ToOuter(new(0, 0, Math.Min(from, to - Hair))), Site.Frame.ToOuter(new(0, 0, to)), radius);

    /// <summary>Circles round the port's axis, of the parameter of its footprint.</summary>
    public Edge3 Ring(Point2 ring)
    {
        var (frame, circle) = (Site.Frame, Circle(ring.U));
        return new(t => circle.At(t) is var (x, y) ? frame.ToOuter(new(x, y, ring.V)) : default, circle.Domain, circle.Breaks);
    }

    private static LoopPath Circle(double radius) => LoopPath.Of(Loop2.Circle(default, radius));

    /// <summary>Along the axis, where the host's outside comes furthest up into the tube.</summary>
    private static double Deepest(PortSite site, double radius) => Enumerable.Range(0, 36)
        .SelectMany(i => new[] { 0, radius / 2, radius }.Select(r => site.Outside.Reach(r, Turns.Full * i / 36)))
        .Where(double.IsFinite)
        .DefaultIfEmpty(0)
        .Max();
}
