using Vessel.Design;
using Vessel.Ports;
using Vessel.Stock;

namespace Vessel.Ports;

/// <summary>Whether a port in the shell finds room sideways.</summary>
internal static class BranchFitCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) => design.Ports
        .Where(p => p.Host == PortHost.Shell)
        .Select(p => Find(new Shown(design.Units), design.Shell, p))
        .OfType<Fault>();

    private static Fault? Find(Shown shown, ShellDesign whole, PortDesign port)
    {
        var side = Math.Abs(port.Place.Offset);
        if (whole.CourseAt(port.Place.Height) is { IsCone: true } cone)
            return OnCone(shown, cone, port);
        var shell = whole.At(port.Place.Height);
        if (side + port.OuterRadius > shell.OuterRadius)
        {
            return TooWide(FaultCodes.BranchWiderThanShell, $"'{port.Name}' reaches beside the shell", "outside",
                port.OuterRadius, shell.OuterRadius);
        }

        if (port.Joint == PortJoint.SetIn && side + ShellHole.HoleRadius(port) > shell.InnerRadius)
        {
            return TooWide(FaultCodes.TubeDoesNotEnter, $"'{port.Name}' does not pass into the shell", "hole",
                ShellHole.HoleRadius(port), shell.InnerRadius);
        }

        var drilled = port.Joint == PortJoint.SetOn && !shell.Course.IsRolled;
        return drilled && side + port.BoreRadius > shell.InnerRadius
            ? TooWide(FaultCodes.DrillRunsOut, $"The hole drilled for '{port.Name}' leaves the shell's bore sideways",
                "bore", port.BoreRadius, shell.InnerRadius)
            : null;

        Fault TooWide(string code, string what, string which, double radius, double room)
        {
            // Moving the port inward helps only where it then fits.
            var fits = radius <= room;
            return new Fault(
                code,
                fits && side > 0 ? $"{port.Path}.at.offset" : port.SizeKey,
                $"{what}: offset and radius of its {which} are together more than the shell's radius there.",
                shown.Length(side + radius),
                $"at most {shown.LengthDown(room)}",
                fits ? $"Use an offset of at most {shown.LengthDown(room - radius)}, or a smaller port."
                    : $"Use a port whose {which} is at most {shown.LengthDown(2 * room)} in diameter.");
        }
    }

    /// <summary>Every line of it and of its hole, which is drilled, must meet the cone.</summary>
    private static Fault? OnCone(Shown shown, ShellCourse cone, PortDesign port)
    {
        var (side, room, hole) = (Math.Abs(port.Place.Offset), cone.OuterAt(port.Place.Height), ShellHole.HoleRadius(port));
        if (!double.IsFinite(side + room + cone.Across + cone.Height + port.Place.Tilt + port.OuterRadius + hole)
            || !(Math.Min(cone.Low, cone.High) > cone.Across))
            return null;
        if (side >= room || ShellFooting.Of(cone.Shell, port) is not { } footing
            || !footing.Outside.Takes(Math.Max(port.OuterRadius, hole)))
            return Misses(FaultCodes.BranchWiderThanShell, "does not meet the cone of the shell all round", port.OuterRadius, room);
        return footing.Inside.Takes(hole) ? null
            : Misses(FaultCodes.TubeDoesNotEnter, "does not pass into the cone of the shell", hole, room - cone.Across);

        Fault Misses(string code, string what, double radius, double limit) => new(
            code, side > 0 ? $"{port.Path}.at.offset" : port.SizeKey, $"'{port.Name}' {what}.", shown.Length(side + radius),
            $"less than about {shown.LengthDown(limit)}", "Use a smaller offset, tilt or port.");
    }
}
