using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>Where the ports of a vessel stand, worked out once: of a design that may be at fault, too.</summary>
internal sealed class PortSites
{
    private readonly (HeadShape? Top, HeadShape? Bottom) _shapes;

    private PortSites(VesselDesign design)
    {
        Design = design;
        _shapes = (HeadShape.Of(VesselEnd.Top, design), HeadShape.Of(VesselEnd.Bottom, design));
        All = [.. design.Ports.Select(Stand)];
        Openings = [.. Found.Where(site => site.OnShell is not null).Select(site => ShellOpening.Of(site))];
    }

    public VesselDesign Design { get; }

    /// <summary>All ports in the order of the file.</summary>
    public ImmutableArray<PortStand> All { get; }

    /// <summary>Sites of the ports that have one.</summary>
    public IEnumerable<PortSite> Found => All.Select(stand => stand.Site).OfType<PortSite>();

    /// <summary>Openings of the ports that fit the shell.</summary>
    public ImmutableArray<ShellOpening> Openings { get; }

    public static PortSites Of(VesselDesign design) => new(design);

    /// <summary>Shape of a head that is a wall of revolution; null for others, and where a size is at fault.</summary>
    public HeadShape? Shape(VesselEnd end) => end == VesselEnd.Top ? _shapes.Top : _shapes.Bottom;

    /// <summary>Site of a port that fits its host.</summary>
    public PortSite Of(PortDesign port) =>
        (All.FirstOrDefault(stand => stand.Port == port) ?? Stand(port)).Site ?? throw new ArgumentException($"'{port.Name}' does not fit "
            + "its host", nameof(port));

    /// <summary>Any port in these walls, one of theirs or one that is tried.</summary>
    public PortStand Stand(PortDesign port) => port.End is not { } end ? InShell(port)
        : Design.Head(port).Plate is { Wall: > 0 } flat ? new(port, OnPlate(port, flat), PortMisfit.None)
        : Shape(end) is { } shape ? OnShape(port, shape)
        : new(port, null, PortMisfit.AtFault);

    /// <summary>How far a port's axis runs through the wall of its host, mm; about that where it misses the wall.</summary>
    public double Through(PortDesign port)
    {
        if (port.End is not { } end)
            return -ShellFooting.Of(Design.Shell, port).Inside.Reach(0, 0);
        // Of a cone with the tip that this port makes, so that another port at the pole does not change its length.
        var head = Design.Head(port);
        return HeadShape.Of(end, head, Design.Shell.AtEnd(end), HeadShape.TipOf(port)) is { } shape
            && HeadFooting.Of(shape, port) is { } footing
            && footing.Inside.Reach(AxisRadius(port, shape), 0) is var reach && double.IsFinite(reach) ? -reach : head.Wall;
    }

    private static double AxisRadius(PortDesign port, HeadShape shape) => port.Place.Radius == 0 ? shape.Tip : 0;

    private PortStand InShell(PortDesign port)
    {
        var shell = Design.Shell;
        var course = shell.CourseAt(port.Place.Height);
        if (ShellFit.BySizes(course, port) is not PortMisfit.None and var wrong)
            return new(port, null, wrong);
        var footing = ShellFooting.Of(shell, port);
        if (ShellFit.ByLines(course, port, footing) is not PortMisfit.None and var misses)
            return new(port, null, misses);
        var site = new PortSite(port, footing.Axis, footing.Outside, footing.Inside, shell.Wall) { OnShell = footing };
        if (SeamStraddle.Of(this, site) is not { } end)
            return new(port, site, PortMisfit.None);
        var both = SeamStraddle.Footing(Design, Shape(end)!, end, footing.Axis);
        return new(
            port,
            site with { Outside = both.Outside, Inside = both.Inside, HostWall = Math.Min(shell.Wall, Design.Head(end).Wall), Over = end },
            PortMisfit.None);
    }

    private PortSite OnPlate(PortDesign port, HeadPlate flat)
    {
        var place = port.Place;
        var (sin, cos) = Math.SinCos(place.Angle);
        var (end, way) = port.Host == PortHost.Top ? (Design.Shell.Height, 1) : (0, -1);
        var (away, up) = (new Vector3(cos, sin, 0), way * Vector3.UnitZ);
        var foot = new Vector3(0, 0, end - (way * flat.Depth));
        return new(
            port,
            new((place.Radius * away) + foot + (flat.Wall * up), away, up.Cross(away), up),
            new PlaneFootprint(0),
            new PlaneFootprint(-flat.Wall),
            flat.Wall);
    }

    private static PortStand OnShape(PortDesign port, HeadShape shape)
    {
        if (HeadFooting.Of(shape, port) is not { } footing)
            return new(port, null, double.IsFinite(port.Place.Radius + port.Place.Angle) ? PortMisfit.Foot : PortMisfit.AtFault);
        var site = new PortSite(port, shape.Frame.Place(footing.Axis), footing.Outside, footing.Inside, shape.Wall)
        {
            AxisRadius = AxisRadius(port, shape),
        };
        return new(
            port,
            site,
            !footing.Outside.Takes(Math.Max(port.OuterRadius, port.HoleRadius)) ? PortMisfit.Foot
                : !footing.Inside.Takes(port.HoleRadius) ? PortMisfit.Hole
                : PortMisfit.None);
    }
}
