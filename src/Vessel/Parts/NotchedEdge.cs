using System.Collections.Concurrent;
using System.Collections.Immutable;
using MathNet.Numerics.Integration;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>One surface within a wall of revolution, parallel to its faces.</summary>
/// <param name="Radius">Where it ends, at the seam, mm.</param>
/// <param name="Under">Where a port's lines meet it, which runs on beyond the seam.</param>
/// <param name="AreaFrom">Area of the surface from a place of it to the seam, mm2 for each radian.</param>
internal sealed record WallLayer(double Radius, Func<PortSite, Footprint> Under, Func<Vector3, double> AreaFrom);

/// <summary>
/// The edge of a shell or dish at the seam between them, with the notches that ports over the seam take out of it: each is drilled along
/// its port's axis. Told in the vessel's frame by a parameter t and the share w of the way through the wall, from the outer face.
/// </summary>
/// <remarks>
/// Every layer of the wall has its own ends of a notch, where the drill's cylinder meets the seam's plane on it, so that the walls of
/// notch and edge meet in a curve that lies in both. From 2 i on t runs along notch i, from 2 i + 1 on along the level edge after it;
/// the edge of one of several sheets begins and ends level, at -1 and 2 n.
/// </remarks>
internal sealed class NotchedEdge
{
    /// <summary>Layers that a notch's volume is summed over, by Gauss: what it takes of each is smooth from layer to layer.</summary>
    private const int Layers = 8;

    private readonly double _level;
    private readonly bool _above;
    private readonly double _wall;
    private readonly Interval? _sheet;
    private readonly ImmutableArray<PortSite> _ports;
    private readonly Func<double, WallLayer> _layerAt;
    private readonly ConcurrentDictionary<double, (WallLayer Layer, ImmutableArray<Notch> Notches)> _layers = new();

    /// <param name="level">Height of the seam, mm.</param>
    /// <param name="above">Whether the part lies above it.</param>
    /// <param name="sheet">Angles between which the part lies; null for all round.</param>
    private NotchedEdge(
        double level, bool above, double wall, Interval? sheet, ImmutableArray<PortSite> ports, Func<double, WallLayer> layerAt)
    {
        (_level, _above, _wall, _sheet, _layerAt) = (level, above, wall, sheet, layerAt);
        _ports = [.. ports.OrderBy(Middle)];
    }

    public bool IsPlain => _ports.IsEmpty;

    public ImmutableArray<PortSite> Ports => _ports;

    public Interval Domain => new(_sheet is null ? 0 : -1, 2 * _ports.Length);

    public ImmutableArray<double> Breaks => [.. Enumerable.Range((int)Domain.Start + 1, (int)Domain.Length - 1).Select(i => (double)i)];

    /// <summary>Metal that all notches take out of the part, mm3.</summary>
    public double Volume => Enumerable.Range(0, _ports.Length).Sum(Taken);

    /// <param name="sites">All of the part's.</param>
    /// <param name="sheet">Angles between which one of several sheets lies; null for all round.</param>
    public static NotchedEdge OfShell(VesselEnd end, ShellCourse course, ImmutableArray<PortSite> sites, Interval? sheet)
    {
        var level = end == VesselEnd.Top ? course.End : course.Start;
        return new(level, end == VesselEnd.Bottom, course.Wall, sheet, Over(end, sites), share =>
        {
            var radius = course.Low - (share * course.Wall);
            return new(
                radius,
                site => new CylinderFootprint(radius, course.Low, site.Port.Place.Offset, site.Port.Place.Tilt),
                at => radius * Math.Abs(at.Z - level));
        });
    }

    public static NotchedEdge OfDish(VesselEnd end, HeadShape shape, ImmutableArray<PortSite> sites) => new(
        shape.Frame.Origin.Z, end == VesselEnd.Top, shape.Wall, null, Over(end, sites), share =>
        {
            var face = shape.Inner.Offset((1 - share) * shape.Wall);
            var onward = shape.InVessel(SeamStraddle.RunOn(face, face.End.U));
            return new(
                face.End.U,
                site => new RevolvedFootprint(onward, site.Frame),
                at => face.NearestTo(shape.Frame.ToLocal(at)).Along is var along && along < face.Length
                    ? face.Part(new(along, face.Length)).Area / Turns.Full
                    : 0);
        });

    public Vector3 At(double t, double w)
    {
        var (i, along) = Read(t);
        var (layer, notches) = LayerAt(w);
        if (i % 2 == 0)
            return notches[i / 2].At(along);
        var angle = LevelAngle(notches, (i - 1) / 2, along);
        return new(layer.Radius * Math.Cos(angle), layer.Radius * Math.Sin(angle), _level);
    }

    /// <summary>Round the vessel, growing with t by a whole turn or from the one seam of a sheet to the other.</summary>
    public double AngleAt(double t, double w)
    {
        var (i, along) = Read(t);
        var notches = LayerAt(w).Notches;
        return i % 2 == 0 ? notches[i / 2].AngleAt(along) : LevelAngle(notches, (i - 1) / 2, along);
    }

    /// <summary>Rim of a shell in the charts of its two faces, whose heights count from <paramref name="lift"/>.</summary>
    public Rim OnShell(CylinderSurface outer, CylinderSurface inner, double lift)
    {
        Point2 On(CylinderSurface face, double t, double w) => face.ChartOf(new(AngleAt(t, w), At(t, w).Z - lift));
        var down = new Vector3(0, 0, -lift);
        return new(Domain, Breaks, t => On(outer, t, 0), t => On(inner, t, 1), 1, (t, w) => At(t, w) + down);
    }

    /// <summary>Rim of a dish in the charts of its two faces, counter-clockwise in its own frame.</summary>
    public Rim OnDish(Frame3 frame, Surface outer, Surface inner)
    {
        Vector3 Local(double t, double w) => frame.ToLocal(At(frame.Z.Z > 0 ? t : Domain.End - t, w));
        return new(
            Domain, Breaks, t => DrilledDome.ChartOf(outer, Local(t, 0)), t => DrilledDome.ChartOf(inner, Local(t, 1)), 0, Local);
    }

    /// <summary>What a notch takes of the outer face's outline: angles round the vessel and heights, from edge to edge.</summary>
    public GraphCurve2 Outline(PortSite port)
    {
        var notch = LayerAt(0).Notches[_ports.IndexOf(port)];
        return new(
            along => new(notch.AngleAt(along), notch.At(along).Z),
            along => new(notch.AngleSlope(along), notch.Slope(along).Z),
            new(0, 1),
            notch.Breaks);
    }

    private static ImmutableArray<PortSite> Over(VesselEnd end, ImmutableArray<PortSite> sites) =>
        [.. sites.Where(site => site.Over == end)];

    private (int Stretch, double Along) Read(double t)
    {
        var stretch = Math.Clamp((int)Math.Floor(t), (int)Domain.Start, (int)Domain.End - 1);
        return (stretch, t - stretch);
    }

    /// <summary>Where a port's axis meets the outside, within the sheet or from 0 on.</summary>
    private double Middle(PortSite port) => Turns.From(Math.Atan2(port.Frame.Origin.Y, port.Frame.Origin.X), _sheet?.Start ?? 0);

    /// <param name="after">The notch before it; -1 at the sheet's first seam.</param>
    private double LevelAngle(ImmutableArray<Notch> notches, int after, double along)
    {
        var from = after < 0 ? _sheet!.Value.Start : notches[after].AngleAt(1);
        var to = after + 1 < notches.Length ? notches[after + 1].AngleAt(0) : _sheet?.End ?? (notches[0].AngleAt(0) + Turns.Full);
        return from + (along * (to - from));
    }

    private (WallLayer Layer, ImmutableArray<Notch> Notches) LayerAt(double w) => _layers.GetOrAdd(w, share =>
    {
        var layer = _layerAt(share);
        return (layer, [.. _ports.Select(port => Cut(port, layer.Under(port)))]);
    });

    /// <summary>The part of a port's footprint on a layer that lies on this side of the seam.</summary>
    private Notch Cut(PortSite port, Footprint face)
    {
        var r = port.OpeningRadius;
        if (SeamStraddle.Crossings(port.Frame, face, r, _level) is not [var first, var second])
            throw new InvalidOperationException($"the hole of '{port.Port.Name}' does not cross the seam twice");
        if (port.Frame.ToOuter(face.At(r, (first + second) / 2)).Z > _level != _above)
            (first, second) = (second, first + Turns.Full);
        var notch = new Notch(port, Middle(port), face, first, second);
        return notch.AngleAt(0) < notch.AngleAt(1) ? notch : notch with { From = second, To = first };
    }

    /// <summary>
    /// Layer by layer: the area of a parallel surface times the step through the wall is its volume, and the area within the notch is the
    /// integral of what lies between its outline and the seam over the angle.
    /// </summary>
    private double Taken(int port) => _wall * GaussLegendreRule.Integrate(
        w =>
        {
            var (layer, notches) = LayerAt(w);
            var notch = notches[port];
            return Quadrature.Periodic(along => layer.AreaFrom(notch.At(along)) * notch.AngleSlope(along), new(0, 1), notch.Breaks, 1e-9);
        },
        0,
        1,
        Layers);

    /// <summary>A stretch of a port's footprint, from the one end at the seam to the other, by the share of the way.</summary>
    private sealed record Notch(PortSite Port, double Middle, Footprint Face, double From, double To)
    {
        public ImmutableArray<double> Breaks =>
        [
            .. Face.Breaks(Port.OpeningRadius).SelectMany(phi => new[] { phi - Turns.Full, phi, phi + Turns.Full })
                .Select(phi => (phi - From) / (To - From)).Where(share => share is > 1e-6 and < 1 - 1e-6).Order(),
        ];

        public Vector3 At(double along) => Port.Frame.ToOuter(Face.At(Port.OpeningRadius, Phi(along)));

        /// <summary>Near the middle's.</summary>
        public double AngleAt(double along)
        {
            var at = At(along);
            return Middle + Turns.Signed(Math.Atan2(at.Y, at.X) - Middle);
        }

        /// <summary>d At / d along.</summary>
        public Vector3 Slope(double along) => (To - From) * Port.Frame.Turn(Face.PathSlope(Port.OpeningRadius, Phi(along)));

        /// <summary>d AngleAt / d along.</summary>
        public double AngleSlope(double along)
        {
            var (at, slope) = (At(along), Slope(along));
            return ((at.X * slope.Y) - (at.Y * slope.X)) / ((at.X * at.X) + (at.Y * at.Y));
        }

        private double Phi(double along) => From + (along * (To - From));
    }
}
