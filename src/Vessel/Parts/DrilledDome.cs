using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>
/// The metal between two faces of revolution, out to a square edge, drilled along its ports' axes. Its frame is the head's own:
/// the pole on -Z.
/// </summary>
/// <param name="Outer">A chart round the pole whose u x v points into the body, as the inner one.</param>
/// <param name="Edge">The rim.</param>
/// <param name="Whole">Volume before drilling, mm3.</param>
/// <param name="Ports">Those that stand in it.</param>
internal sealed record DrilledDome(
    Frame3 Frame, Surface Outer, Surface Inner, Rim Edge, double Whole, ImmutableArray<PortSite> Ports)
{
    public Solid Solid => ThickSolid.Of(Outer, Inner, false, [Edge, .. Ports.Select(Drilled)]);

    public double Volume => Whole - Ports.Sum(DrilledOut);

    public ImmutableArray<Hole> Holes => [.. Ports.Select((port, i) => port.HoleInHost(i + 1, port.On(Frame), null))];

    /// <summary>Dome that is part of a sphere round the frame's origin.</summary>
    /// <param name="angle">Angle from the pole to the edge, radians.</param>
    public static DrilledDome OfSphere(Frame3 frame, double radius, double wall, double angle, ImmutableArray<PortSite> ports)
    {
        var (outer, inner) = (new SphereSurface(radius), new SphereSurface(radius - wall));
        // A spherical sector's share of the wall.
        var whole = 2 * Math.PI / 3 * (1 - Math.Cos(angle)) * (Math.Pow(outer.Radius, 3) - Math.Pow(inner.Radius, 3));
        return new(
            frame, outer, inner,
            new(Interval.Turn, [], t => outer.ChartOf(angle, t), t => inner.ChartOf(angle, t)), whole, ports);
    }

    /// <param name="edge">Edge at the seam, with what ports of the shell take out of it.</param>
    public static DrilledDome Of(HeadShape shape, ImmutableArray<PortSite> ports, NotchedEdge edge)
    {
        var dome = Faces(shape) is (SphereSurface { Radius: var radius }, _)
            ? OfSphere(shape.Frame, radius, shape.Wall, Math.PI / 2, ports)
            : Of(shape.Frame, new(shape.Outer, shape.Inner), ports);
        return edge.IsPlain ? dome : dome with
        {
            Edge = edge.OnDish(dome.Frame, dome.Outer, dome.Inner),
            Whole = dome.Whole - edge.Volume,
        };
    }

    /// <summary>A head's two faces; a half sphere's own chart takes the fewest facets.</summary>
    public static (Surface Outer, Surface Inner) Faces(HeadShape shape) =>
        shape.InnerSphere is { } radius && shape.Inner.Pieces.Length == 1
            ? (new SphereSurface(radius + shape.Wall), new SphereSurface(radius))
            : (new RevolvedSurface(shape.Outer), new RevolvedSurface(shape.Inner));

    public static DrilledDome Of(Frame3 frame, WallZone wall, ImmutableArray<PortSite> ports)
    {
        var (outer, inner) = (new RevolvedSurface(wall.Outer), new RevolvedSurface(wall.Inner));
        return new(
            frame, outer, inner,
            new(Interval.Turn, [], t => Point2.Polar(outer.Reach, t), t => Point2.Polar(inner.Reach, t)),
            wall.Volume, ports);
    }

    /// <summary>Metal that a port's hole takes, mm3.</summary>
    public static double DrilledOut(PortSite port) => Quadrature.Disc(
        port.OpeningRadius, (r, phi) => port.Outside.Reach(r, phi) - port.Inside.Reach(r, phi), port.Outside.Accuracy);

    private Rim Drilled(PortSite port)
    {
        Vector3 Local(Footprint on, double phi) => Frame.ToLocal(port.Frame.ToOuter(on.At(port.OpeningRadius, phi)));
        return new(
            Interval.Turn, [], phi => ChartOf(Outer, Local(port.Outside, phi)), phi => ChartOf(Inner, Local(port.Inside, phi)));
    }

    /// <summary>The chart point of a place on or near a face of revolution, in the head's own frame.</summary>
    public static Point2 ChartOf(Surface face, Vector3 at) => face switch
    {
        SphereSurface sphere => sphere.ChartOf(at),
        RevolvedSurface revolved => revolved.ChartOf(at),
        _ => throw new ArgumentOutOfRangeException(nameof(face)),
    };
}
