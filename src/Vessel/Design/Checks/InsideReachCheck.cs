using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>
/// Tubes that reach in through the shell's wall, or slanted through a head's, and run into what stands inside. Each straight line along a tube's
/// outside is met with each ring exactly; the lines are a degree and more apart, so that only what surely collides is
/// found.
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

    /// <summary>Z inward along the tube's axis, from where that passes the inside of what the tube stands in; null where it does not enter.</summary>
    public static Frame3? AxisOf(VesselDesign design, PortDesign port)
    {
        if (port.Host == PortHost.Shell)
            return ShellHole.Of(design.Shell, port) is null ? null : AxisOf(design.Shell, port.Place);
        if (HeadShape.Of(port.Host, design) is not { } shape || HeadFooting.Of(shape, port) is not { } footing)
            return null;
        var frame = shape.Frame.Place(footing.Axis);
        return new(frame.ToOuter(new(0, 0, footing.Inside.Reach(0, 0))), frame.X, -frame.Y, -frame.Z);
    }

    private static Frame3 AxisOf(ShellDesign shell, PortPlace place)
    {
        var (outside, inside) = (BranchAxis.HalfChord(shell.OuterRadius, place.Offset), BranchAxis.HalfChord(shell.InnerRadius, place.Offset));
        var (forward, side) = (new Vector3(Math.Cos(place.Angle), Math.Sin(place.Angle), 0), new Vector3(-Math.Sin(place.Angle), Math.Cos(place.Angle), 0));
        var inward = (-Math.Cos(place.Tilt) * forward) - (Math.Sin(place.Tilt) * Vector3.UnitZ);
        var start = (inside * forward) + (place.Offset * side)
            + ((place.Height + ((inside - outside) * Math.Tan(place.Tilt))) * Vector3.UnitZ);
        return new(start, side, inward.Cross(side), inward);
    }

    private static double? FirstMeeting(PortDesign port, List<LineInward> lines, InsideBody body) =>
        body.Rings.SelectMany(ring => lines.Select(line => line.FirstMeeting(ring, port.InsideLength))).Min();

    private static Fault? Find(Shown shown, PortDesign port, List<LineInward> lines, InsideBody body) =>
        FirstMeeting(port, lines, body) is not { } reach
            ? null
            : new Fault(FaultCodes.PartsCollide, $"{port.Path}.inside_length",
                $"The inner end of '{port.Name}' runs into '{body.Name}'.", shown.Length(port.InsideLength),
                $"at most {shown.Length(reach)}", "Make its inside length smaller.");

    /// <summary>Along the outside of the tube; null where it does not enter.</summary>
    private static List<LineInward>? LinesOf(VesselDesign design, PortDesign port)
    {
        var angles = Enumerable.Range(0, Lines).Select(i => Turns.Full * i / Lines);
        if (port.Host == PortHost.Shell)
            return ShellHole.Of(design.Shell, port) is null ? null
                : design.Shell.IsPlain ? [.. angles.Select(phi => Line(design.Shell, port, phi))]
                : ShellFooting.Of(design.Shell, port) is var foot ? Along(foot.Axis, foot.Inside.Reach(0, 0)) : null;
        if (HeadShape.Of(port.Host, design) is not { } shape || HeadFooting.Of(shape, port) is not { } footing)
            return null;
        return Along(shape.Frame.Place(footing.Axis), footing.Inside.Reach(0, 0));

        List<LineInward> Along(Frame3 frame, double start) =>
            [.. angles.Select(phi => Line(frame.ToOuter(Footprint.OnLine(port.OuterRadius, phi, start)), -frame.Z))];
    }

    /// <summary>Seen so that it runs along -x: through a point of space in a direction that is not upright.</summary>
    private static LineInward Line(Vector3 point, Vector3 inward)
    {
        var level = double.Hypot(inward.X, inward.Y);
        var forward = new Point2(-inward.X / level, -inward.Y / level);
        var at = new Point2(point.X, point.Y);
        return new(at.Dot(forward), forward.Cross(at), point.Z, -inward.Z, level);
    }

    private static LineInward Line(ShellDesign shell, PortDesign port, double phi)
    {
        var place = port.Place;
        var outside = BranchAxis.HalfChord(shell.OuterRadius, place.Offset);
        var inside = BranchAxis.HalfChord(shell.InnerRadius, place.Offset);
        var (sin, cos) = Math.SinCos(place.Tilt);
        var up = port.OuterRadius * Math.Cos(phi);
        return new LineInward(
            inside - (up * sin),
            place.Offset + (port.OuterRadius * Math.Sin(phi)),
            place.Height + ((inside - outside) * sin / cos) + (up * cos),
            sin,
            cos);
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
