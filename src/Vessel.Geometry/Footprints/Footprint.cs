using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// Where lines along one axis first meet a surface, coming from outside. A line is named by its distance r from the
/// axis and its angle phi round it. Everything is told in the axis' own frame: Z along the axis, outward, and the
/// origin where the axis meets the outside of the body, which may be another surface than this one. A closed set.
/// </summary>
/// <remarks>
/// The surface is convex, so <see cref="Reach"/> is concave in r along every phi and its greatest value over a wall
/// lies at one of the wall's faces or at the single place where the slope is zero.
/// </remarks>
public abstract record Footprint
{
    private protected Footprint()
    {
    }

    /// <summary>What integrals over it may aim for, relative: finer ones only chase rounding, or jumps of curvature.</summary>
    public virtual double Accuracy => 1e-11;

    /// <summary>Whether every line of radius r meets the surface (touching included).</summary>
    public abstract bool Takes(double r);

    /// <summary>Distance along the axis at which line (r, phi) meets the surface, mm.</summary>
    public abstract double Reach(double r, double phi);

    /// <summary>d Reach / d phi.</summary>
    public abstract double ReachSlope(double r, double phi);

    /// <summary>Unit normal of the surface there, out of the body.</summary>
    public abstract Vector3 Normal(double r, double phi);

    /// <summary>Distance of a point from the surface, positive outside, mm.</summary>
    public abstract double Distance(Vector3 point);

    /// <summary>The r between inner and outer at which line (r, phi) reaches furthest.</summary>
    public abstract double GoverningRadius(double inner, double outer, double phi);

    /// <summary>Angles, ascending, at which the path at a distance r from the axis has a corner or its curvature jumps.</summary>
    public virtual ImmutableArray<double> Breaks(double r) => [];

    /// <summary>Reach, its slope and the normal at once, for what needs all three.</summary>
    public virtual Meeting Meet(double r, double phi) => new(Reach(r, phi), ReachSlope(r, phi), Normal(r, phi));

    /// <summary>Least and greatest reach of the lines at a distance r, all of which meet the surface.</summary>
    public Interval Reaches(double r) => Extremes.Of(phi => Reach(r, phi), phi => ReachSlope(r, phi), Interval.Turn);

    /// <summary>The meeting point of line (r, phi).</summary>
    public Vector3 At(double r, double phi) => OnLine(r, phi, Reach(r, phi));

    /// <summary>The point of line (r, phi) at a distance along the axis.</summary>
    public static Vector3 OnLine(double r, double phi, double along) => new(r * Math.Cos(phi), r * Math.Sin(phi), along);

    /// <summary>d At / d phi: along the path.</summary>
    public Vector3 PathSlope(double r, double phi) =>
        new(-r * Math.Sin(phi), r * Math.Cos(phi), ReachSlope(r, phi));
}
