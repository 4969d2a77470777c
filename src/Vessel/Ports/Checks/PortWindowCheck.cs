using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Whether a port's tube stands free inside far enough for its windows, and they find room in it.</summary>
internal static class PortWindowCheck
{
    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var shown = new UnitFormat(sites.Design.Units);
        // A tube that ends in its host or flush has no free length, wherever it stands.
        return
        [
            .. sites.All.Where(stand => !stand.Port.Windows.IsEmpty)
                .SelectMany(stand => InPort(shown, stand.Port, stand.Site is { } site ? site.FreeLength
                : stand.Port.Joint == PortJoint.SetOn || stand.Port.IsFlush ? 0
                : double.NaN)),
        ];
    }

    private static IEnumerable<Fault> InPort(UnitFormat shown, PortDesign port, double free)
    {
        // Anything lower would be less than a window between two walls.
        var least = 2 * port.Wall;
        return free > least || double.IsNaN(free) || double.IsNaN(least)
            ? WindowCheck.Find(shown, port.Windows, new(port.Name, port.OutsideDiameter, port.Wall, free, "on the host's side of",
                "on the inner end's side of"), null, port.Path)
            :
            [
                new Fault(FaultCodes.WindowsNotInside, port.Windows[0].Path,
                    $"The tube of '{port.Name}' does not stand free inside the vessel far enough for windows.",
                    shown.Length(Math.Max(0, free)),
                    $"more than {shown.LengthUp(least)}",
                    port.Joint == PortJoint.SetOn ? "Use 'joint: set_in' with an 'inside_length', or delete the windows."
                    : port.IsFlush ? "Use 'inner_end: square' with an 'inside_length', or delete the windows."
                    : $"Give an 'inside_length' of more than {shown.LengthUp(port.InsideLength + least - free)}, or delete the windows."),
            ];
    }
}
