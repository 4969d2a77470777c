using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Whether a port in the shell finds room sideways.</summary>
internal static class BranchFitCheck
{
    public static IEnumerable<Fault> Find(PortSites sites) => sites.All
        .Where(stand => stand is { Port.Host: PortHost.Shell, Misfit: PortMisfit.Foot or PortMisfit.Hole })
        .Select(stand => Find(new UnitFormat(sites.Design.Units), sites.Design.Shell.At(stand.Port.Place.Height), stand));

    private static Fault Find(UnitFormat shown, ShellSection shell, PortStand stand)
    {
        var (port, side, isFoot) = (stand.Port, Math.Abs(stand.Port.Place.Offset), stand.Misfit == PortMisfit.Foot);
        if (shell.Course.IsCone)
        {
            return isFoot
                ? Misses(FaultCodes.BranchWiderThanShell, "does not meet the cone of the shell all round", port.OuterRadius,
                    shell.OuterRadius)
                : Misses(FaultCodes.TubeDoesNotEnter, "does not pass into the cone of the shell", port.HoleRadius, shell.InnerRadius);
        }

        return isFoot
            ? TooWide(FaultCodes.BranchWiderThanShell, $"'{port.Name}' reaches beside the shell", "outside", port.OuterRadius,
                shell.OuterRadius)
            : port.Joint == PortJoint.SetIn
            ? TooWide(FaultCodes.TubeDoesNotEnter, $"'{port.Name}' does not pass into the shell", "hole", port.HoleRadius,
                shell.InnerRadius)
            : TooWide(FaultCodes.DrillRunsOut, $"The hole drilled for '{port.Name}' leaves the shell's bore sideways", "bore",
                port.BoreRadius, shell.InnerRadius);

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

        Fault Misses(string code, string what, double radius, double limit) => new(
            code, side > 0 ? $"{port.Path}.at.offset" : port.SizeKey, $"'{port.Name}' {what}.", shown.Length(side + radius),
            $"less than about {shown.LengthDown(limit)}", "Use a smaller offset, tilt or port.");
    }
}
