using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Ports;

/// <summary>
/// Tubes that reach in through the shell's wall, or slanted through a head's, and run into what stands inside. Each straight line along a
/// tube's outside is met with each ring exactly; the lines are a degree and more apart, so that only what surely collides is found.
/// </summary>
internal static class InsideReachCheck
{
    private const int Lines = 180;

    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        var bodies = InsideBodies.OfInside(design).ToList();
        return design.Ports
            .Where(p => p.InsideLength > 0 && InsideBodies.Leans(design, p))
            .SelectMany(p => LinesOf(design, p) is { } lines ? bodies.Select(b => Find(shown, p, lines, b)).OfType<Fault>().Take(1) : []);
    }

    /// <summary>How far the tube may reach in before it meets the body, along its axis from the inside of what it stands in,
    /// mm; null where it does not, or where it does not enter.</summary>
    public static double? FirstMeeting(VesselDesign design, PortDesign port, InsideBody body) =>
        LinesOf(design, port) is { } lines ? FirstMeeting(port, lines, body) : null;

    /// <summary>
    /// Z inward along the tube's axis, from where that passes the inside of what the tube stands in; null where it does not enter.
    /// </summary>
    public static Frame3? AxisOf(VesselDesign design, PortDesign port)
    {
        if (port.Host == PortHost.Shell)
            return ShellHole.Of(design.Shell, port) is null || ShellFooting.Of(design, port) is not { } foot ? null
                : Inward(foot.Axis, foot.Inside);
        return HeadShape.Of(port.Host, design) is { } shape && HeadFooting.Of(shape, port) is { } footing
            ? Inward(shape.Frame.Place(footing.Axis), footing.Inside)
            : null;
    }

    private static Frame3 Inward(Frame3 outward, Footprint inside) =>
        new(outward.ToOuter(new(0, 0, inside.Reach(0, 0))), outward.X, -outward.Y, -outward.Z);

    private static double? FirstMeeting(PortDesign port, List<LineInward> lines, InsideBody body) =>
        body.Rings.SelectMany(ring => lines.Select(line => line.FirstMeeting(ring, port.InsideLength))).Min();

    private static Fault? Find(Shown shown, PortDesign port, List<LineInward> lines, InsideBody body) =>
        FirstMeeting(port, lines, body) is not { } reach
            ? null
            : new Fault(FaultCodes.PartsCollide, $"{port.Path}.inside_length",
                $"The inner end of '{port.Name}' runs into '{body.Name}'.", shown.Length(port.InsideLength),
                $"at most {shown.LengthDown(reach)}", "Make its inside length smaller.");

    /// <summary>Along the outside of the tube; null where it does not enter.</summary>
    private static List<LineInward>? LinesOf(VesselDesign design, PortDesign port) => AxisOf(design, port) is not { } axis ? null :
    [
        .. Enumerable.Range(0, Lines).Select(i => Point2.Polar(port.OuterRadius, Turns.Full * i / Lines))
            .Select(at => Line(axis.ToOuter(new(at.U, at.V, 0)), axis.Z)),
    ];

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
            var half = BranchAxis.HalfChord(ring.Outer, Y);
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
