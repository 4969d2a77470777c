using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Ports;

/// <summary>
/// The hole that a port asks of the shell, as curves in (angle round the vessel, height), counter-clockwise.
/// </summary>
/// <param name="Lift">Height of the part's lower edge, from which heights count, mm.</param>
/// <param name="Outer">On the outer face; in a rolled shell on every face.</param>
/// <param name="Inner">On the inner face.</param>
internal sealed record ShellOpening(
    PortSite Site,
    double Lift,
    Interval Domain,
    ImmutableArray<double> Breaks,
    Func<double, Point2> Outer,
    Func<double, Point2> OuterSlope,
    Func<double, Point2> Inner)
{
    /// <summary>Above the noise of a widened outline's slope.</summary>
    private const double AreaAccuracy = 1e-9;

    /// <summary>Where a port's axis meets the outside: angle, and height above <paramref name="lift"/>.</summary>
    public static Point2 AxisPlace(PortSite site, double lift) =>
        new(Math.Atan2(site.Frame.Origin.Y, site.Frame.Origin.X), site.Frame.Origin.Z - lift);

    /// <param name="shell">Section of the cylinder that the port stands in.</param>
    public static ShellOpening Of(PortSite site, ShellSection shell, double lift = 0)
    {
        var (outside, inside) = ((CylinderFootprint)site.Outside, (CylinderFootprint)site.Inside);
        var port = site.Port;
        var origin = new Point2(port.Place.Angle, port.Place.Height - lift);
        var radius = site.OpeningRadius;
        Point2 OnOutside(double phi) => origin + outside.Place(radius, phi);
        Point2 OutsideSlope(double phi) => outside.PlaceSlope(radius, phi);
        if (!shell.Course.IsRolled)
            return new(
                site, lift, Interval.Turn, outside.Corners(radius), OnOutside, OutsideSlope, phi => origin + inside.Place(radius, phi));

        // The bore of a set-on tube is taken on the outer face, so that the hole stays under the tube's end.
        if (port.Joint == PortJoint.SetOn)
            return new(site, lift, Interval.Turn, outside.Corners(radius), OnOutside, OutsideSlope, OnOutside);

        // What lets a tube pass that is thicker by the clearance keeps that clearance, square to the tube, where the wall comes nearest.
        var outline = new WallOutline(outside, shell.InnerRadius, radius);
        Point2 Passing(double t) => origin + outline.At(t);
        return new(site, lift, WallOutline.Domain, WallOutline.Breaks, Passing, outline.Slope, Passing);
    }

    /// <summary>Holes over this share of the diameter roll unevenly. Common practice, no source.</summary>
    public const double LargeShare = 0.25;

    /// <summary>Whether its metal is left in a rolled shell's flat, scribed or on tabs.</summary>
    public bool IsLeft(ShellSection shell) =>
        shell.Course.Shell.LargeHoles != LargeHoles.BeforeRolling && 2 * Site.OpeningRadius > LargeShare * shell.OutsideDiameter;

    public Rim Rim(CylinderSurface outer, CylinderSurface inner) => new(
        Domain,
        Breaks,
        t => outer.ChartOf(Outer(t)),
        t => inner.ChartOf(Inner(t)));

    /// <summary>Least and greatest angle round the vessel, to a hair.</summary>
    public Interval Angles
    {
        get
        {
            const int samples = 720;
            var angles = Enumerable.Range(0, samples).Select(i => Outer(Domain.At((double)i / samples)).U).ToList();
            return new(angles.Min(), angles.Max());
        }
    }

    /// <summary>The hole on the shell's flat, clockwise, which is this outline backwards.</summary>
    /// <param name="radius">Of the cylinder on which the flat keeps its lengths.</param>
    public Loop2 OnFlat(Development development, double radius)
    {
        // Unrolled from one place on, so that an outline that runs over the flat's edge stays in one piece.
        var from = Outer(Domain.At(0.5)).U;
        var start = development.Flatten(new(from, 0));
        double Back(double t) => Domain.Start + Domain.End - t;
        Point2 OnFlat(Point2 place) => start + new Point2(radius * (place.U - from), place.V);
        Point2 BackSlope(Point2 slope) => new(-radius * slope.U, -slope.V);
        return new([new GraphCurve2(
            t => OnFlat(Outer(Back(t))),
            t => BackSlope(OuterSlope(Back(t))),
            Domain,
            [.. Breaks.Select(Back).Order()])]);
    }

    /// <summary>Metal taken out of the wall, mm3.</summary>
    public double Volume(ShellSection shell)
    {
        if (shell.Course.IsRolled)
        {
            // Radial walls: the (angle, height) area times the integral of r dr through the wall.
            var pole = Outer(Domain.Start);
            var area = Quadrature.Periodic(t => 0.5 * (Outer(t) - pole).Cross(OuterSlope(t)), Domain, Breaks, AreaAccuracy);
            return area * shell.MidRadius * shell.Wall;
        }

        // Along the bore: between the footprints of the two faces, over the disc.
        return Quadrature.Disc(Site.OpeningRadius, (r, phi) => Site.Outside.Reach(r, phi) - Site.Inside.Reach(r, phi));
    }
}
