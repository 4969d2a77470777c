using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A profile that begins on the axis, or runs outward from a ring, turned about the axis: spun heads. As on <see cref="SphereSurface"/> the
/// chart is polar round the pole, its angle that round +Z and its radius the pieces' <see cref="ProfilePiece.Spread"/>, one after the
/// other.
/// </summary>
public sealed record RevolvedSurface : Surface
{
    /// <summary>Chart radius where each piece ends, and the factor of its spread.</summary>
    private readonly ImmutableArray<(double End, double Factor)> _rings;

    public RevolvedSurface(Profile profile)
    {
        Profile = profile;
        var rings = ImmutableArray.CreateBuilder<(double End, double Factor)>(profile.Pieces.Length);
        foreach (var spread in profile.Pieces.Select(piece => piece.Spread))
        {
            // The first is drawn to about its true size.
            var factor = rings.Count > 0 ? rings[^1].End / spread.Start
                : spread.Start > 0 ? profile.Start.U / spread.Start
                : profile.Pieces[0].Length / spread.End;
            rings.Add((factor * spread.End, factor));
        }

        _rings = rings.MoveToImmutable();
    }

    public Profile Profile { get; }

    /// <summary>Chart radius of the profile's end.</summary>
    public double Reach => _rings[^1].End;

    public override Vector3 At(Point2 chart)
    {
        var (at, _, radius) = Read(chart);
        return radius == 0 ? new(0, 0, at.V) : new(at.U * chart.U / radius, at.U * chart.V / radius, at.V);
    }

    public override Vector3 Normal(Point2 chart)
    {
        var (_, normal, radius) = Read(chart);
        return radius == 0
            ? new(0, 0, -normal.V)
            : new(-normal.U * chart.U / radius, -normal.U * chart.V / radius, -normal.V);
    }

    /// <summary>The chart point of the place nearest to a point, which lies on or near the surface.</summary>
    public Point2 ChartOf(Vector3 point)
    {
        var ring = double.Hypot(point.X, point.Y);
        var foot = Profile.Nearest(new(ring, point.Z));
        var radius = _rings[foot.Piece].Factor * foot.Spread;
        return ring == 0 ? default : new(radius * point.X / ring, radius * point.Y / ring);
    }

    private (Point2 At, Point2 Normal, double Radius) Read(Point2 chart)
    {
        var radius = chart.Length;
        var i = 0;
        while (i + 1 < _rings.Length && radius >= _rings[i].End)
            i++;
        var (at, normal) = Profile.Pieces[i].AtSpread(radius / _rings[i].Factor);
        return (at, normal, radius);
    }
}
