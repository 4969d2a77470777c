using Vessel.Design;

namespace Vessel.Function;

/// <summary>Where the gas comes in and where it leaves, when the design does not say: the highest open port is the vent.</summary>
internal static class FlowEnds
{
    /// <summary>Null with fewer than two open ports.</summary>
    public static (Opening Inlet, Opening Vent)? Of(Cavity cavity, VesselDesign design)
    {
        var open = cavity.OpenPorts.ToList();
        if (open.Count < 2)
            return null;
        // Of two that stand equally high the later one, so that the file's order is the gas's.
        var vent = open.Select((port, i) => (port, i)).MaxBy(at => (Height(at.port, design), at.i)).port;
        return (open.First(port => port != vent), vent);
    }

    /// <summary>Height of a port's foot, mm; heads lie beyond the shell.</summary>
    private static double Height(Opening port, VesselDesign design) =>
        design.Ports.First(p => p.Name == port.Name) is var found && found.Host == PortHost.Top ? double.MaxValue
            : found.Host == PortHost.Bottom ? double.MinValue
            : found.Place.Height;
}
