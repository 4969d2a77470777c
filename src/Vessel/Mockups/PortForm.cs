using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>
/// A port as it is printed: its outside from the footprint on the vessel outward, then the rings of its end, then the bore into
/// the room inside.
/// </summary>
/// <param name="Rings">Circles round the axis (radius, distance along it) from the free end of the outside to that of the bore.</param>
/// <param name="Bore">Where the bore meets the room; null when it is printed without one.</param>
internal sealed record PortForm(PortSite Site, ImmutableArray<Point2> Rings, Imprint Outside, Imprint? Bore)
{
    /// <summary>A narrower bore would not come out open, mm of radius.</summary>
    private const double LeastBore = 0.5;

    private const double Hair = 0.01;

    public string Id => Slug.Of(Site.Port.Name);

    /// <summary>Angle round the vessel's axis about which it lies.</summary>
    public double Angle => Math.Atan2(Site.Frame.Origin.Y, Site.Frame.Origin.X);

    /// <param name="inside">Null for a mock-up without a room.</param>
    public static PortForm Of(PortSite site, Profile outside, Profile? inside, double leastWall)
    {
        var port = site.Port;
        var bore = Math.Min(port.BoreRadius, port.OuterRadius - leastWall);
        var opens = inside is not null && bore >= LeastBore;
        var rings = ImmutableArray.CreateBuilder<Point2>();
        rings.Add(new(port.OuterRadius, port.Length));
        var end = port.Length;
        if (FittingEnvelope.Of(port) is { } fitting)
        {
            if (fitting.Radius > port.OuterRadius + Hair)
                rings.Add(new(fitting.Radius, end));
            end += fitting.Length;
            rings.Add(new(Math.Max(fitting.Radius, port.OuterRadius), end));
        }

        if (opens)
            rings.Add(new(bore, end));
        return new(
            site,
            rings.ToImmutable(),
            new(outside, site.Frame, Circle(port.OuterRadius)),
            opens ? new(inside!, site.Frame, Circle(bore)) : null);
    }

    /// <summary>Everything outside the vessel, and more where the footprint is deep.</summary>
    /// <param name="from">Along the axis, mm.</param>
    public ImmutableArray<Bar> Bars(double from)
    {
        var bars = ImmutableArray.CreateBuilder<Bar>();
        bars.Add(Round(Rings[0].U, from, Rings[0].V));
        if (FittingEnvelope.Of(Site.Port) is { } fitting)
            bars.Add(Round(Math.Max(fitting.Radius, Site.Port.OuterRadius), Site.Port.Length, Site.Port.Length + fitting.Length));
        return bars.ToImmutable();
    }

    /// <summary>Circles round the port's axis, of the parameter of its footprint.</summary>
    public Edge3 Ring(Point2 ring)
    {
        var (frame, circle) = (Site.Frame, Circle(ring.U));
        return new(t => circle.At(t) is var (x, y) ? frame.ToOuter(new(x, y, ring.V)) : default, circle.Domain, circle.Breaks);
    }

    private static LoopPath Circle(double radius) => LoopPath.Of(Loop2.Circle(default, radius));

    private Bar Round(double radius, double from, double to) => new(
        Site.Frame.ToOuter(new(0, 0, Math.Min(from, to - Hair))), Site.Frame.ToOuter(new(0, 0, to)), radius);
}
