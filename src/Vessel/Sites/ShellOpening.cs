using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>
/// The hole that a port asks of the shell and the foot that it stands on, as curves in (angle round the vessel, height), counter-clockwise;
/// as if the course of the shell had no ends. Angles may run below 0 or beyond a whole turn.
/// </summary>
internal sealed class ShellOpening
{
    /// <summary>Above the noise of a widened outline's slope.</summary>
    private const double AreaAccuracy = 1e-9;

    /// <summary>Corners of an outline where it is taken as a polygon: it is then off by under 1e-5 of its radius.</summary>
    private const int Corners = 720;

    private readonly Lazy<(Interval HoleHeights, Interval FootHeights, Interval Angles)> _extents;

    private ShellOpening(PortSite site, double lift, Outline2 outer, Outline2 inner, Outline2 foot)
    {
        (Site, Lift, Outer, Inner, Foot) = (site, lift, outer, inner, foot);
        _extents = new(() => (
            Holes.Select(outline => outline.Vs).Aggregate((a, b) => a.With(b)),
            Foot.Vs,
            Holes.Append(Foot).Select(outline => outline.Us).Aggregate((a, b) => a.With(b))));
    }

    public PortSite Site { get; }

    public PortDesign Port => Site.Port;

    /// <summary>Height of the part's lower edge, from which heights count, mm.</summary>
    public double Lift { get; }

    /// <summary>The hole on the outer face; in a rolled cylinder on every face.</summary>
    public Outline2 Outer { get; }

    /// <summary>The hole on the inner face.</summary>
    public Outline2 Inner { get; }

    /// <summary>Round the port's own outside, on the outer face.</summary>
    public Outline2 Foot { get; }

    /// <summary>Lowest and highest place of the hole, through the wall, mm.</summary>
    public Interval HoleHeights => _extents.Value.HoleHeights;

    /// <summary>Lowest and highest place of the foot, mm.</summary>
    public Interval FootHeights => _extents.Value.FootHeights;

    /// <summary>Heights of hole and foot together, mm.</summary>
    public Interval Heights => HoleHeights.With(FootHeights);

    /// <summary>Angles of hole and foot together, radians.</summary>
    public Interval Angles => _extents.Value.Angles;

    private IEnumerable<Outline2> Holes => ReferenceEquals(Outer, Inner) ? [Outer] : [Inner, Outer];

    /// <summary>Where a port's axis meets the outside: angle, and height above <paramref name="lift"/>.</summary>
    public static Point2 AxisPlace(PortSite site, double lift) =>
        new(Math.Atan2(site.Frame.Origin.Y, site.Frame.Origin.X), site.Frame.Origin.Z - lift);

    public static ShellOpening Of(PortSite site, double lift = 0)
    {
        var (footing, port, radius) = (site.OnShell!, site.Port, site.OpeningRadius);
        var course = footing.Course;
        if (footing is not { Outside: CylinderFootprint outside, Inside: CylinderFootprint inside })
            return new(
                site, lift, OnCone(site, footing.Outside, radius, lift), OnCone(site, footing.Inside, radius, lift),
                OnCone(site, footing.Outside, port.OuterRadius, lift));
        var origin = new Point2(port.Place.Angle, port.Place.Height - lift);
        Outline2 On(CylinderFootprint face, double around) =>
            new(Interval.Turn, outside.Corners(around), phi => origin + face.Place(around, phi), phi => face.PlaceSlope(around, phi));
        var (foot, outer) = (On(outside, port.OuterRadius), On(outside, radius));
        if (!course.IsRolled)
            return new(site, lift, outer, On(inside, radius), foot);

        // The bore of a set-on tube is taken on the outer face, so that the hole stays under the tube's end.
        if (port.Joint == PortJoint.SetOn)
            return new(site, lift, outer, outer, foot);

        // What lets a tube pass that is thicker by the clearance keeps that clearance, square to the tube, where the wall comes nearest.
        var wide = new WallOutline(outside, inside.Radius, radius);
        var passing = new Outline2(WallOutline.Domain, WallOutline.Breaks, t => origin + wide.At(t), wide.Slope);
        return new(site, lift, passing, passing, foot);
    }

    private static Outline2 OnCone(PortSite site, Footprint face, double radius, double lift)
    {
        var (axis, angle) = (site.Frame, site.Port.Place.Angle);
        return new(Interval.Turn, face.Breaks(radius), At, Slope);

        Point2 At(double phi)
        {
            var at = axis.ToOuter(face.At(radius, phi));
            return new(angle + Turns.Signed(Math.Atan2(at.Y, at.X) - angle), at.Z - lift);
        }

        Point2 Slope(double phi)
        {
            var (at, slope) = (axis.ToOuter(face.At(radius, phi)), axis.Turn(face.PathSlope(radius, phi)));
            return new(((at.X * slope.Y) - (at.Y * slope.X)) / ((at.X * at.X) + (at.Y * at.Y)), slope.Z);
        }
    }

    /// <summary>Holes over this share of the diameter roll unevenly. Common practice, no source.</summary>
    public const double LargeShare = 0.25;

    /// <summary>Whether its metal is left in a rolled shell's flat, scribed or on tabs.</summary>
    public bool IsLeft(ShellSection shell) =>
        shell.Course.Shell.LargeHoles != LargeHoles.BeforeRolling && 2 * Site.OpeningRadius > LargeShare * shell.OutsideDiameter;

    public Rim Rim(CylinderSurface outer, CylinderSurface inner) => new(
        Outer.Domain,
        Outer.Breaks,
        t => outer.ChartOf(Outer.At(t)),
        t => inner.ChartOf(Inner.At(t)));

    /// <summary>The hole's outlines spread out, mm along a cylinder of a radius from <paramref name="shift"/> and up.</summary>
    public ImmutableArray<Polygon> Flat(double radius, double shift = 0) => [.. Holes.Select(outline => Polygon(outline, radius, shift))];

    /// <summary>The same, with the foot.</summary>
    public ImmutableArray<Polygon> FlatWithFoot(double radius, double shift = 0) =>
        [.. Holes.Append(Foot).Select(outline => Polygon(outline, radius, shift))];

    private static Polygon Polygon(Outline2 outline, double radius, double shift)
    {
        var points = outline.Points(Corners).Select(at => new Coordinate((at.U * radius) + shift, at.V)).ToList();
        return new(new LinearRing([.. points, points[0]]));
    }

    /// <summary>The hole on the shell's flat, clockwise, which is this outline backwards.</summary>
    /// <param name="radius">Radius of the cylinder on which the flat keeps its lengths.</param>
    public Loop2 OnFlat(Development development, double radius)
    {
        // Unrolled from one place on, so that an outline that runs over the flat's edge stays in one piece.
        var from = Outer.At(Outer.Domain.At(0.5)).U;
        var start = development.Flatten(new(from, 0));
        double Back(double t) => Outer.Domain.Start + Outer.Domain.End - t;
        Point2 OnFlat(Point2 place) => start + new Point2(radius * (place.U - from), place.V);
        Point2 BackSlope(Point2 slope) => new(-radius * slope.U, -slope.V);
        return new([new GraphCurve2(
            t => OnFlat(Outer.At(Back(t))),
            t => BackSlope(Outer.Slope(Back(t))),
            Outer.Domain,
            [.. Outer.Breaks.Select(Back).Order()])]);
    }

    /// <summary>Metal taken out of the wall, mm3.</summary>
    public double Volume(ShellSection shell)
    {
        if (shell.Course.IsRolled)
        {
            // Radial walls: the (angle, height) area times the integral of r dr through the wall.
            var pole = Outer.At(Outer.Domain.Start);
            var area = Quadrature.Periodic(t => 0.5 * (Outer.At(t) - pole).Cross(Outer.Slope(t)), Outer.Domain, Outer.Breaks, AreaAccuracy);
            return area * shell.MidRadius * shell.Wall;
        }

        // Along the bore: between the footprints of the two faces, over the disc.
        return Quadrature.Disc(Site.OpeningRadius, (r, phi) => Site.Outside.Reach(r, phi) - Site.Inside.Reach(r, phi));
    }
}
