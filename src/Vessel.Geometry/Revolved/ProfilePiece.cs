using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A piece of a <see cref="Profile"/>: a smooth directed curve in the half plane of (distance r from the axis, height z),
/// with the outside on its right. Told by arc length, mm. A closed set: <see cref="LinePiece"/>, <see cref="ArcPiece"/>,
/// <see cref="EllipsePiece"/>.
/// </summary>
public abstract record ProfilePiece
{
    /// <summary>A place within this of a piece's end counts to the piece: at a joint one of both takes each line, mm.</summary>
    private const double Seam = 1e-9;

    /// <summary>Share of a body's size that rounding leaves of a distance.</summary>
    private const double Near = 1e-15;

    /// <summary>A line that comes no nearer than this share of the size counts as touching.</summary>
    private const double Graze = 1e-13;

    private const int MostSteps = 200;

    /// <summary>What is met lies nearer to the curve than this, mm.</summary>
    private const double OnCurve = 1e-6;

    private protected ProfilePiece()
    {
    }

    /// <summary>mm.</summary>
    public abstract double Length { get; }

    /// <summary>Area of the surface that the piece sweeps in a whole turn, mm2.</summary>
    public abstract double Area { get; }

    /// <summary>pi times the integral of r^2 dz along the piece, mm3: what lies between it and the axis.</summary>
    public abstract double Volume { get; }

    /// <summary>Point at an arc length; U = r, V = z.</summary>
    public abstract Point2 At(double along);

    /// <summary>Unit, out of the body.</summary>
    public abstract Point2 Normal(double along);

    /// <summary>
    /// What the polar chart of <see cref="RevolvedSurface"/> takes for the piece's radius, but for a factor: grows along the piece,
    /// from zero where it begins on the axis. To its own share a step grows by w ds / r, w being the root of the ratio of both
    /// radii of curvature, so that facets that are round in the chart are as long each way as the surface lets them be.
    /// </summary>
    internal abstract Interval Spread { get; }

    /// <summary>Point and normal at a value of <see cref="Spread"/>, in closed form.</summary>
    internal abstract (Point2 At, Point2 Normal) AtSpread(double spread);

    /// <summary>The radius at a height between those of the two ends, on a piece along which it only rises.</summary>
    public abstract double RadiusAt(double height);

    /// <summary>pi times the integral of r^2 dz along the piece up to a height, mm3; a height beyond an end counts as the end.</summary>
    public abstract double VolumeBelow(double height);

    /// <summary>The piece moved out along its normals by a distance, mm; negative inwards.</summary>
    /// <exception cref="ArgumentException">The curve would fold over, or is not known there.</exception>
    public abstract ProfilePiece Offset(double distance);

    /// <summary>What lies between two arc lengths.</summary>
    public abstract ProfilePiece Part(Interval along);

    public abstract ProfilePiece Moved(double up);

    /// <summary>Upside down, run the other way, so that the outside stays on its right.</summary>
    public abstract ProfilePiece Flipped();

    /// <summary>The nearest place of the curve, which is thought to run on beyond its ends as far as its kind does.</summary>
    public abstract ProfileFoot Project(Point2 point);

    /// <summary>
    /// Where a line that runs on both ways meets the surface of the whole curve, as signed distances from a point of the line
    /// along its unit direction. May hold places beyond the piece's ends, or where the line leaves the body.
    /// </summary>
    private protected abstract ImmutableArray<double> Crossings(Vector3 point, Vector3 direction);

    /// <summary>Whether a foot lies on the piece itself.</summary>
    internal bool Holds(ProfileFoot foot) => foot.Along >= -Seam && foot.Along <= Length + Seam;

    /// <summary>The first place at which a line enters the body through this piece; null for none.</summary>
    internal (double Along, ProfileFoot Foot)? FirstEntry(Vector3 point, Vector3 direction)
    {
        (double Along, ProfileFoot Foot)? first = null;
        foreach (var along in Crossings(point, direction))
        {
            if (along >= (first?.Along ?? double.PositiveInfinity))
                continue;
            var at = point + (along * direction);
            var foot = Project(HalfPlane(at));
            // A cone's other half, or a face of the body that is not this curve's.
            if (Math.Abs(foot.Distance) > OnCurve)
                continue;
            if (Holds(foot) && Steepness(at, foot.Normal, direction) <= LineHit.Touch)
                first = (along, foot);
        }

        return first;
    }

    /// <summary>Radius of a circle of latitude at the eccentric angle t in the map that keeps a sphere's angles.</summary>
    private protected static double SphereSpread(double t) => Math.Tan((t / 2) + (Math.PI / 4));

    private protected static double SphereAngle(double spread) => (2 * Math.Atan(spread)) - (Math.PI / 2);

    internal static Point2 HalfPlane(Vector3 point) => new(double.Hypot(point.X, point.Y), point.Z);

    /// <summary>A direction of the half plane through a point of space.</summary>
    internal static Vector3 Turned(Vector3 at, Point2 direction)
    {
        var ring = double.Hypot(at.X, at.Y);
        // On the axis itself only a direction along it is the same all round.
        return ring == 0 ? new(0, 0, direction.V) : new(direction.U * at.X / ring, direction.U * at.Y / ring, direction.V);
    }

    /// <summary>Normal . direction: negative where the line enters.</summary>
    private static double Steepness(Vector3 at, Point2 normal, Vector3 direction) => Turned(at, normal).Dot(direction);

    /// <summary>
    /// Where a line enters a convex body round the axis; null when it misses. Newton's method on the distance from the body,
    /// begun outside: along a line that distance is convex, so no step passes the place that is sought.
    /// </summary>
    /// <param name="reach">Radius of a ball round <paramref name="centre"/> on the axis that holds the body.</param>
    /// <param name="body">Signed distance of a point of the half plane from the body, and its gradient.</param>
    private protected static double? Entry(
        Vector3 point, Vector3 direction, double centre, double reach, Func<Point2, (double Distance, Point2 Gradient)> body)
    {
        if (RoundRoots(point with { Z = point.Z - centre }, direction, reach) is not [var along, ..])
            return null;
        for (var i = 0; i < MostSteps; i++)
        {
            var at = point + (along * direction);
            var (distance, gradient) = body(HalfPlane(at));
            var slope = Steepness(at, gradient, direction);
            if (distance <= Near * reach)
                return along;
            if (slope >= -double.Epsilon)
                return distance <= Graze * reach ? along : null;
            var next = along - (distance / slope);
            if (next == along || next > along + (4 * reach))
                return next == along || distance <= Graze * reach ? along : null;
            along = next;
        }

        return along;
    }

    /// <summary>Where a line meets a ball round the origin: two places, in order, or none.</summary>
    private protected static ImmutableArray<double> RoundRoots(Vector3 point, Vector3 direction, double radius)
    {
        // From the foot of the perpendicular, so that nothing cancels where the line grazes.
        var middle = -point.Dot(direction);
        var apart = (point + (middle * direction)).Length;
        if (apart > radius * (1 + Near))
            return [];
        var half = Math.Sqrt(Math.Max(0, (radius - apart) * (radius + apart)));
        return [middle - half, middle + half];
    }
}

/// <summary>A place on a piece.</summary>
/// <param name="Along">Arc length from the piece's start; beyond its ends negative or more than its length.</param>
/// <param name="Distance">Distance of the point that was projected, positive outside.</param>
public readonly record struct ProfileFoot(double Along, Point2 At, Point2 Normal, double Distance)
{
    /// <summary>Radius of the place in the polar chart; see <see cref="ProfilePiece.Spread"/>.</summary>
    internal double Spread { get; init; }

    /// <summary>Number of the piece on its profile.</summary>
    internal int Piece { get; init; }
}
