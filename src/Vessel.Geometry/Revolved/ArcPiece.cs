using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A circular arc with the body on its centre's side: turned, a sphere when the centre lies on the axis, else the outer part of
/// a torus. Runs counter-clockwise in the half plane.
/// </summary>
/// <param name="Center">Centre; its r is not negative.</param>
/// <param name="Angles">Angles from start to end, radians from the direction away from the axis; within -pi/2 to pi/2.</param>
public sealed record ArcPiece(Point2 Center, double Radius, Interval Angles) : ProfilePiece
{
    public override double Length => Radius * Angles.Length;

    public override double Area
    {
        get
        {
            var (from, to) = (Angles.Start, Angles.End);
            return Turns.Full * Radius * ((Center.U * (to - from)) + (Radius * (Math.Sin(to) - Math.Sin(from))));
        }
    }

    public override double Volume => Math.PI * Radius * (Primitive(Angles.End) - Primitive(Angles.Start));

    public override Point2 At(double along) => Center + Point2.Polar(Radius, Angles.Start + (along / Radius));

    public override Point2 Normal(double along) => Point2.Polar(1, Angles.Start + (along / Radius));

    public override double RadiusAt(double height)
    {
        var up = height - Center.V;
        return Center.U + Math.Sqrt(Math.Max(0, (Radius - up) * (Radius + up)));
    }

    public override double VolumeBelow(double height)
    {
        var angle = Math.Asin(Math.Clamp((height - Center.V) / Radius, -1, 1));
        return Math.PI * Radius * (Primitive(Math.Clamp(angle, Angles.Start, Angles.End)) - Primitive(Angles.Start));
    }

    /// <summary>The spread of a torus by its middle: e to the power of w a t / r.</summary>
    internal override Interval Spread => new(SpreadAt(Angles.Start), SpreadAt(Angles.End));

    internal override (Point2 At, Point2 Normal) AtSpread(double spread)
    {
        var normal = Point2.Polar(1, Center.U == 0 ? SphereAngle(spread) : Math.Log(spread) / Pace);
        return (Center + (Radius * normal), normal);
    }

    private double Pace
    {
        get
        {
            var cos = Math.Cos(Angles.At(0.5));
            var ring = Center.U + (Radius * cos);
            return Radius / ring * Math.Sqrt(ring / cos / Radius);
        }
    }

    private double SpreadAt(double angle) => Center.U == 0 ? SphereSpread(angle) : Math.Exp(Pace * angle);

    public override ArcPiece Offset(double distance) => Radius + distance > 0
        ? this with { Radius = Radius + distance }
        : throw new ArgumentException("an arc has no such parallel: its radius is used up");

    public override ArcPiece Part(Interval along) =>
        this with { Angles = new(Angles.Start + (along.Start / Radius), Angles.Start + (along.End / Radius)) };

    public override ArcPiece Moved(double up) => this with { Center = Center + new Point2(0, up) };

    public override ArcPiece Flipped() => new(new(Center.U, -Center.V), Radius, new(-Angles.End, -Angles.Start));

    public override ProfileFoot Project(Point2 point)
    {
        var away = point - Center;
        var distance = away.Length;
        var normal = distance == 0 ? Normal(Length / 2) : away.Unit();
        return new(Radius * (normal.Angle - Angles.Start), Center + (Radius * normal), normal, distance - Radius)
        {
            Spread = SpreadAt(normal.Angle),
        };
    }

    /// <summary>
    /// A sphere's in closed form. The torus is met as the rim of the body of all points within the radius of a disc, which is
    /// convex; where the line enters that through its flat faces it does not enter through the arc.
    /// </summary>
    private protected override ImmutableArray<double> Crossings(Vector3 point, Vector3 direction)
    {
        if (Center.U == 0)
            return RoundRoots(point with { Z = point.Z - Center.V }, direction, Radius);
        return Entry(point, direction, Center.V, Center.U + Radius, RoundedDisc) is { } along ? [along] : [];
    }

    private (double Distance, Point2 Gradient) RoundedDisc(Point2 at)
    {
        var away = at - Center;
        if (away.U <= 0)
            return (Math.Abs(away.V) - Radius, new(0, Math.Sign(away.V)));
        var distance = away.Length;
        return distance == 0 ? (-Radius, new(1, 0)) : (distance - Radius, away.Unit());
    }

    /// <summary>Primitive of r^2 cos t with r = c + a cos t.</summary>
    private double Primitive(double t)
    {
        var (c, a, sin) = (Center.U, Radius, Math.Sin(t));
        return (c * c * sin) + (c * a * (t + (sin * Math.Cos(t)))) + (a * a * (sin - (sin * sin * sin / 3)));
    }
}
