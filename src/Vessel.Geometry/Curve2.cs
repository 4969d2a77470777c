using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A directed plane curve, exact. A closed set of kinds, to be matched by switch: <see cref="Line2"/>,
/// <see cref="Arc2"/> (also the full circle) and <see cref="GraphCurve2"/>.
/// </summary>
public abstract record Curve2
{
    private protected Curve2()
    {
    }

    public abstract Interval Domain { get; }

    /// <summary>Parameters, inside the domain, where the slope may jump; ascending.</summary>
    public virtual ImmutableArray<double> Breaks => [];

    public Point2 Start => At(Domain.Start);

    public Point2 End => At(Domain.End);

    public abstract Point2 At(double t);

    /// <summary>The derivative of <see cref="At"/>.</summary>
    public abstract Point2 Slope(double t);
}

/// <summary>The segment from A (t = 0) to B (t = 1).</summary>
public sealed record Line2(Point2 A, Point2 B) : Curve2
{
    public override Interval Domain => new(0, 1);

    public override Point2 At(double t) => t == 1 ? B : A + (t * (B - A));

    public override Point2 Slope(double t) => B - A;
}

/// <summary>
/// A circular arc from angle <paramref name="From"/> through <paramref name="Sweep"/> (radians, positive
/// counter-clockwise); a sweep of +-2 pi is a whole circle. t runs from 0 to 1.
/// </summary>
public sealed record Arc2(Point2 Center, double Radius, double From, double Sweep) : Curve2
{
    public override Interval Domain => new(0, 1);

    public bool IsCircle => Math.Abs(Math.Abs(Sweep) - (2 * Math.PI)) < 1e-12;

    /// <summary>A whole circle, counter-clockwise, or clockwise as a hole runs.</summary>
    public static Arc2 Circle(Point2 center, double radius, bool clockwise = false) =>
        new(center, radius, 0, clockwise ? -2 * Math.PI : 2 * Math.PI);

    public override Point2 At(double t) => Center + Point2.Polar(Radius, From + (t * Sweep));

    public override Point2 Slope(double t) => (Radius * Sweep) * Point2.Polar(1, From + (t * Sweep)).Turned;
}

/// <summary>A curve given by functions of its parameter, smooth but for the breaks.</summary>
public sealed record GraphCurve2(
    Func<double, Point2> Position,
    Func<double, Point2> Derivative,
    Interval Range,
    ImmutableArray<double> Corners) : Curve2
{
    public override Interval Domain => Range;

    public override ImmutableArray<double> Breaks => Corners;

    public override Point2 At(double t) => Position(t);

    public override Point2 Slope(double t) => Derivative(t);
}
