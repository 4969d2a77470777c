using Vessel.Design;

namespace Vessel.Function;

/// <summary>Which open ports liquid may fill without harm: an overflow, a gauge's, a suction's or a return's pipe that rises above its mouth.</summary>
internal static class Standpipes
{
    /// <summary>
    /// Neither the gas's inlet nor its vent, by the design's own order or as found, and an overflow, or with a mouth that lies wholly below the
    /// place that liquid has to pass to run out. With fewer than two open ports each of them is the gas's.
    /// </summary>
    public static Cavity Marked(VesselDesign vessel, Cavity cavity, Position position)
    {
        var attitude = new Attitude(cavity, position);
        var order = vessel.Flow.Order;
        string[] ends = !order.IsEmpty ? [order[0], order[^1]]
            : FlowEnds.Of(cavity, vessel) is var (inlet, vent) ? [inlet.Name, vent.Name]
            : [.. cavity.OpenPorts.Select(port => port.Name)];
        return cavity with
        {
            Openings = [.. cavity.Openings
                .Select(way => way with
                {
                    IsStandpipe = way is { IsPort: true, Plugged: false } && (way.Purpose == PortPurpose.Overflow
                        || (!ends.Contains(way.Name) && attitude.Sill(way) > attitude.Highest(way))),
                })],
        };
    }
}
