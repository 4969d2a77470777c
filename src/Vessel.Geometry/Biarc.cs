using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// One arc, or two that share a tangent where they meet, from a point and direction to another point and direction.
/// </summary>
/// <remarks>
/// With v = p1 - p0 and unit directions d0, d1 the two inner control points p0 + a d0 and p1 - a d1 lie 2a apart when
/// 2 (1 - d0.d1) a^2 + 2 a v.(d0 + d1) - v.v = 0; the arcs then meet half-way between them with a common tangent.
/// The positive root is written without a difference, so that equal directions need no case of their own.
/// Derived here. Valid while v.(d0 + d1) is positive: the whole turns less than a full turn.
/// </remarks>
internal sealed class Biarc
{
    // Directions that miss those of one arc by less than this, radians, may be served by one arc: a kink of 0.006
    // degrees, far below what a cutter's controller takes for a corner.
    private const double SingleArc = 1e-4;

    private readonly ImmutableArray<Segment> _segments;

    private Biarc(ImmutableArray<Segment> segments) => _segments = segments;

    /// <summary>Greatest turn of one of the arcs from its chord, radians: half of its sweep.</summary>
    public double Turn => _segments.Max(segment => Math.Abs(segment.HalfSweep));

    /// <summary>Its vertices but for the last point.</summary>
    public IEnumerable<Bulge> Vertices => _segments.Select(segment => new Bulge(segment.From, segment.Bulge));

    /// <summary>The arc or arcs, one arc where that is enough; null when there are none that turn forward.</summary>
    public static Biarc? Through(Point2 from, Point2 fromDirection, Point2 to, Point2 toDirection)
    {
        var v = to - from;
        var forward = v.Dot(fromDirection + toDirection);
        if (!(forward > 0))
            return null;
        var (first, last) = (Between(fromDirection, v), Between(v, toDirection));
        if (Math.Abs(first - last) < SingleArc)
            return new([new Segment(from, to, (first + last) / 2)]);

        var spread = (fromDirection - toDirection).Length;
        var reach = v.Dot(v) / (forward + Math.Sqrt((forward * forward) + (spread * spread * v.Dot(v))));
        var joint = 0.5 * (from + to + (reach * (fromDirection - toDirection)));
        return new([
            new(from, joint, Between(fromDirection, joint - from)),
            new(joint, to, Between(to - joint, toDirection)),
        ]);
    }

    /// <summary>Distance from a point to the nearest of the arcs, mm.</summary>
    public double Distance(Point2 point)
    {
        var nearest = double.PositiveInfinity;
        foreach (var segment in _segments)
            nearest = Math.Min(nearest, segment.Distance(point));
        return nearest;
    }

    private static double Between(Point2 a, Point2 b) => Math.Atan2(a.Cross(b), a.Dot(b));

    /// <summary>A line when the turn is too small to see in double precision, an arc otherwise.</summary>
    private sealed class Segment
    {
        private readonly Point2 _chord;
        private readonly Point2 _center;
        private readonly double _radius;

        public Segment(Point2 from, Point2 to, double halfSweep)
        {
            (From, To, HalfSweep) = (from, to, Math.Abs(halfSweep) < 1e-9 ? 0 : halfSweep);
            _chord = to - from;
            if (HalfSweep == 0)
                return;
            _radius = _chord.Length / (2 * Math.Sin(HalfSweep));
            _center = (0.5 * (from + to)) + ((_radius * Math.Cos(HalfSweep)) * _chord.Unit().Turned);
        }

        public Point2 From { get; }

        public Point2 To { get; }

        public double HalfSweep { get; }

        public double Bulge => Math.Tan(HalfSweep / 2);

        public double Distance(Point2 point)
        {
            if (HalfSweep == 0)
            {
                var share = Math.Clamp((point - From).Dot(_chord) / _chord.Dot(_chord), 0, 1);
                return (point - From - (share * _chord)).Length;
            }

            var arm = point - _center;
            var inside = HalfSweep * (From - _center).Cross(arm) >= 0 && HalfSweep * arm.Cross(To - _center) >= 0;
            return inside ? Math.Abs(arm.Length - Math.Abs(_radius)) : Math.Min((point - From).Length, (point - To).Length);
        }
    }
}
