using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>
/// Straight lines along the outside of a tube that reaches in and leans. Each is met with each ring exactly; they are a degree and more
/// apart, so that only what surely collides is found.
/// </summary>
internal sealed class TubeLines
{
    private const int Count = 180;

    private readonly double _length;
    private readonly List<LineInward> _lines;

    public TubeLines(PortSite site)
    {
        var axis = site.Inward;
        _length = site.Port.InsideLength;
        _lines =
        [
            .. Enumerable.Range(0, Count).Select(i => Footprint.OnLine(site.Port.OuterRadius, Turns.Full * i / Count, 0))
                .Select(at => Line(axis.ToOuter(at), axis.Z)),
        ];
    }

    /// <summary>How far the tube may reach in before it meets the body, along its axis from the inside of what it stands in,
    /// mm; null where it does not.</summary>
    public double? FirstMeeting(InsideBody body) =>
        body.Rings.SelectMany(ring => _lines.Select(line => line.FirstMeeting(ring, _length))).Min();

    /// <summary>Seen so that it runs along -x: through a point of space in a direction that is not upright.</summary>
    private static LineInward Line(Vector3 point, Vector3 inward)
    {
        var level = double.Hypot(inward.X, inward.Y);
        var forward = new Point2(-inward.X / level, -inward.Y / level);
        var at = new Point2(point.X, point.Y);
        return new(at.Dot(forward), forward.Cross(at), point.Z, -inward.Z, level);
    }

    /// <summary>x forward, y sideways and z up at the start; s along it inward: x - s cos, y, z - s sin.</summary>
    private readonly record struct LineInward(double X, double Y, double Z, double Sin, double Cos)
    {
        /// <summary>The least s at which the line is inside the ring, at most <paramref name="length"/>; else null.</summary>
        public double? FirstMeeting(Ring ring, double length)
        {
            var half = Circles.HalfChord(ring.Outer, Y);
            var (from, to) = (Math.Max(0, (X - half) / Cos), Math.Min(length, (X + half) / Cos));
            if (Sin != 0)
            {
                var (a, b) = ((Z - ring.Low) / Sin, (Z - ring.High) / Sin);
                (from, to) = (Math.Max(from, Math.Min(a, b)), Math.Min(to, Math.Max(a, b)));
            }
            else if (!(Z > ring.Low && Z < ring.High))
            {
                return null;
            }

            // Distance from the axis has no greatest value between the ends, so the line lies in the ring's opening
            // only where both ends do. What is not a number, where the circle is missed, compares false.
            return from < to - Ring.Hair && Math.Max(Distance(from), Distance(to)) > ring.Inner + Ring.Hair ? from : null;
        }

        private double Distance(double s) => Math.Sqrt(((X - (s * Cos)) * (X - (s * Cos))) + (Y * Y));
    }
}
