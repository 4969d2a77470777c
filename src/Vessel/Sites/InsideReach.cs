using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>How far a port's tube may reach in before it meets the far side of the vessel.</summary>
internal static class InsideReach
{
    /// <summary>Lines round a tube that leans.</summary>
    private const int Lines = 72;

    /// <summary>Along the axis from where that meets the inside of its host, mm; not a number where a size is at fault.</summary>
    public static double Of(PortSites sites, PortStand stand)
    {
        var (design, port) = (sites.Design, stand.Port);
        if (port.Host == PortHost.Shell)
        {
            return stand.Site is not { } site ? double.NaN
                : port.InsideLength == 0 ? double.PositiveInfinity
                : design.Shell.IsPlain && site.Inside is CylinderFootprint inside ? site.InsideAxis - inside.Innermost(port.OuterRadius)
                : Slanted(sites, site);
        }

        if (port.InsideLength > 0 && stand.Site is { Leans: true } leaning)
            return Slanted(sites, leaning);
        var end = port.End!.Value;
        return design.Shell.Height + Beyond(sites, end, port.Place.Radius)
            + Beyond(sites, end == VesselEnd.Top ? VesselEnd.Bottom : VesselEnd.Top, port.Place.Radius + port.OuterRadius);
    }

    /// <summary>How far the head's inner face lies beyond the shell's end; negative for an inset plate.</summary>
    private static double Beyond(PortSites sites, VesselEnd end, double radius) => sites.Shape(end) is { } shape ? shape.DepthAt(radius)
        : sites.Design.Head(end).Plate is { } flat ? -flat.Depth
        : double.NaN;

    /// <summary>
    /// Length from where the axis meets the inside to the first of the tube's lines that leaves the room on its far side.
    /// </summary>
    private static double Slanted(PortSites sites, PortSite site)
    {
        var (design, shell) = (sites.Design, sites.Design.Shell);
        var (low, high) = (design.Bottom.Depth, shell.Height - design.Top.Depth);
        if (!(low < high && shell.LeastInner(0, shell.Height) > 0)
            || new[] { VesselEnd.Top, VesselEnd.Bottom }.Any(end => sites.Shape(end) is null && design.Head(end).Plate is null))
        {
            return double.NaN;
        }

        var inside = InsideProfile.Of(design);
        return Enumerable.Range(0, Lines).Min(i =>
        {
            var line = site.Frame.ToOuter(Footprint.OnLine(site.Port.OuterRadius, Turns.Full * i / Lines, site.InsideAxis));
            // Where it would come in from the far side it goes out.
            return inside.FirstHit(line, site.Frame.Z) is { } hit ? -hit.Along : double.NaN;
        });
    }
}
