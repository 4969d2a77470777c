using Vessel.Design;

namespace Vessel.Function;

/// <summary>
/// Where the gas comes in and where it leaves, when the design gives no order. What a port is for goes first; of those that do not say,
/// the highest open one is the vent, and the first other one the inlet.
/// </summary>
internal static class FlowEnds
{
    /// <summary>Null where nothing can come in, or nothing leave.</summary>
    public static (Opening Inlet, Opening Vent)? Of(Cavity cavity, VesselDesign design)
    {
        var open = cavity.OpenPorts.ToList();
        var vent = VentOf(open, design);
        var inlet = open.Find(port => port.Purpose == PortPurpose.GasIn) ?? open.Find(port => port.Purpose is null && port != vent);
        return inlet is null || vent is null ? null : (inlet, vent);
    }

    /// <summary>Of two that stand equally high the later one, so that the file's order is the gas's.</summary>
    private static Opening? VentOf(List<Opening> open, VesselDesign design) =>
        new PortPurpose?[] { PortPurpose.GasOut, PortPurpose.Vent, null }
            .Select(purpose => open.Select((port, i) => (port, i)).Where(at => at.port.Purpose == purpose).ToList())
            .FirstOrDefault(those => those.Count > 0)?
            .MaxBy(at => (Height(at.port, design), at.i)).port;

    /// <summary>Height of a port's foot, mm; heads lie beyond the shell.</summary>
    private static double Height(Opening port, VesselDesign design) =>
        design.Ports.First(p => p.Name == port.Name) is var found && found.End == VesselEnd.Top ? double.MaxValue
            : found.End == VesselEnd.Bottom ? double.MinValue
            : found.Place.Height;
}
