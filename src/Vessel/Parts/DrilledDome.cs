using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// The metal of a sphere round its pole, out to a square edge, drilled along its ports' axes. Its frame has the sphere's
/// centre at the origin and the pole on -Z.
/// </summary>
/// <param name="Site">Of the head.</param>
/// <param name="Angle">From the pole to the edge, radians.</param>
/// <param name="Ports">Those that stand in it.</param>
internal sealed record DrilledDome(HeadSite Site, double Wall, double Angle, ImmutableArray<PortSite> Ports)
{
    public Frame3 Frame => new(Site.Frame.Origin, Site.Frame.X, -Site.Frame.Y, -Site.Frame.Z);

    private SphereSurface Outer => new(Site.Radius);

    private SphereSurface Inner => new(Site.Radius - Wall);

    public Solid Solid => ThickSolid.Of(Outer, Inner, false, [Edge(), .. Ports.Select(Drilled)]);

    /// <summary>mm3: a spherical sector's share of the wall, less what is drilled out.</summary>
    public double Volume =>
        (2 * Math.PI / 3 * (1 - Math.Cos(Angle)) * (Math.Pow(Outer.Radius, 3) - Math.Pow(Inner.Radius, 3)))
        - Ports.Sum(port => Quadrature.Disc(
            port.OpeningRadius, (r, phi) => port.Outside.Reach(r, phi) - port.Inside.Reach(r, phi)));

    public ImmutableArray<Hole> Holes => [.. Ports.Select((port, i) => port.HoleInHost(i + 1, port.On(Frame), null))];

    private Rim Edge() => new(
        Interval.Turn,
        [],
        t => Outer.ChartOf(Angle, t),
        t => Inner.ChartOf(Angle, t));

    private Rim Drilled(PortSite port)
    {
        Vector3 Local(Footprint on, double phi) => Frame.ToLocal(port.Frame.ToOuter(on.At(port.OpeningRadius, phi)));
        return new(
            Interval.Turn, [], phi => Outer.ChartOf(Local(port.Outside, phi)), phi => Inner.ChartOf(Local(port.Inside, phi)));
    }
}
