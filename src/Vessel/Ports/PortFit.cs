using Vessel.Design;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>How a set-in port goes into the hole in its host.</summary>
internal static class PortFit
{
    public static SlipFit Of(PortSite site, VesselDesign vessel)
    {
        var (port, host) = (site.Port, Names.PortPart(site.Port, vessel));
        var hole = 2 * site.OpeningRadius;
        var drilled = port.Host == PortHost.Shell ? vessel.Shell.CourseAt(port.Place.Height) is { IsRolled: false } or { IsCone: true }
            : vessel.Head(port).Plate is null;
        return new(
            $"'{port.Name}' in {Names.Of(port.Host)}", [host, Slug.Of(port.Name)], 2 * port.Clearance,
            [
                drilled ? SlipFits.Turned($"hole in {Names.Of(port.Host)}", hole) : SlipFits.Laser($"hole in {Names.Of(port.Host)}", hole, site.HostWall),
                port.Thread is null ? SlipFits.Tube($"outside of '{port.Name}'", port.OutsideDiameter, port.Material)
                    : SlipFits.Turned($"outside of '{port.Name}', turned", port.OutsideDiameter),
            ],
            $"{port.Path}.clearance");
    }
}
