using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>
/// Tubes that reach in through the shell's wall and run into what stands inside. Each straight line along a tube's
/// outside is met with each ring exactly; the lines are a degree and more apart, so that only what surely collides is
/// found.
/// </summary>
internal static class InsideReachCheck
{
    private const int Lines = 180;

    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        var bodies = design.Inside.Sleeves.Select(s => InsideBodies.Of(design, s))
            .Concat(design.Inside.Caps.Select(c => InsideBodies.Of(design, c)))
            .Concat(design.Inside.Discs.Select(InsideBodies.Of))
            .ToList();
        return design.Ports
            .Where(p => p.Host == PortHost.Shell && p.InsideLength > 0 && ShellHole.Of(design.Shell, p) is not null)
            .SelectMany(p => bodies.Select(b => Find(shown, design.Shell, p, b)).OfType<Fault>().Take(1));
    }

    /// <summary>How far the tube may reach in before it meets the body, along its axis from the shell's inside, mm; null
    /// where it does not.</summary>
    public static double? FirstMeeting(ShellDesign shell, PortDesign port, InsideBody body) =>
        body.Rings.SelectMany(ring => Enumerable.Range(0, Lines)
            .Select(i => Line(shell, port, Turns.Full * i / Lines).FirstMeeting(ring, port.InsideLength))).Min();

    private static Fault? Find(Shown shown, ShellDesign shell, PortDesign port, InsideBody body) =>
        FirstMeeting(shell, port, body) is not { } reach
            ? null
            : new Fault(FaultCodes.PartsCollide, $"{port.Path}.inside_length",
                $"The inner end of '{port.Name}' runs into '{body.Name}'.", shown.Length(port.InsideLength),
                $"at most {shown.Length(reach)}", "Make its inside length smaller.");

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
