using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Ports;

/// <summary>Where a port stands: its axis in the vessel and its footprints on the two faces of its host.</summary>
/// <param name="Frame">Origin where the axis meets the host's outside, Z along the axis to the free end. X is the
/// side that faces down the shell (on a head: away from the vessel's axis), Y follows by the right hand.</param>
/// <param name="Outside">On the host's outer face.</param>
/// <param name="Inside">On the host's inner face.</param>
/// <param name="HostWall">Of the host, the thinner one of two, mm.</param>
public sealed record PortSite(PortDesign Port, Frame3 Frame, Footprint Outside, Footprint Inside, double HostWall)
{
    /// <summary>Set-in: where the tube's square inner end lies along the axis, mm (negative).</summary>
    public double InnerEnd => InsideAxis - Port.InsideLength;

    /// <summary>Straight stretches of its axis from where it meets the host's outside to the free end.</summary>
    public ImmutableArray<TubeLeg> Legs => TubeLeg.Of(Port, Frame);

    /// <summary>At the free end, Z outward.</summary>
    public Frame3 FreeEnd => Legs[^1].End;

    /// <summary>Along the axis from the host's outside to the free end, round the bend; mm.</summary>
    public double Run => Legs.Sum(leg => leg.Length);

    /// <summary>Radius of the cylinder that the host is opened for.</summary>
    public double OpeningRadius =>
        Port.Joint == PortJoint.SetOn ? Port.BoreRadius : Port.OuterRadius + Port.Clearance;

    /// <summary>Where the axis meets the host's outside, seen along the Z of a frame: its X and Y there.</summary>
    public Point2 On(Frame3 frame)
    {
        var local = frame.ToLocal(Frame.Origin);
        return new(local.X, local.Y);
    }

    /// <summary>Where the axis meets the host's inside, mm along it.</summary>
    public double InsideAxis => Inside.Reach(AxisRadius, 0);

    /// <summary>The head over whose seam a port in the shell stands as well; null for others. See <see cref="OverSeam"/>.</summary>
    public PortHost? Over { get; private init; }

    /// <summary>
    /// Distance from the axis at which lengths along it count from where a face lies, mm; see <see cref="HeadFooting.AxisRadius"/>.
    /// </summary>
    public double AxisRadius { get; private init; }

    public static PortSite Of(PortDesign port, VesselDesign vessel) => port.Host switch
    {
        PortHost.Shell => OnShell(port, vessel),
        _ when vessel.Head(port.Host).Plate is { } plate => OnPlate(port, plate, vessel.Shell),
        _ => OnShape(port, HeadShape.Of(port.Host, vessel)!),
    };

    private static PortSite OnShell(PortDesign port, VesselDesign vessel)
    {
        var (footing, over) = (ShellFooting.Of(vessel, port), OverSeam.Of(vessel, port));
        var wall = over is { } end ? Math.Min(vessel.Shell.Wall, vessel.Head(end).Wall) : vessel.Shell.Wall;
        return new(port, footing.Axis, footing.Outside, footing.Inside, wall) { Over = over };
    }

    private static PortSite OnPlate(PortDesign port, HeadPlate plate, ShellDesign shell)
    {
        var place = port.Place;
        var (sin, cos) = Math.SinCos(place.Angle);
        var (end, way) = port.Host == PortHost.Top ? (shell.Height, 1) : (0, -1);
        var (away, up) = (new Vector3(cos, sin, 0), way * Vector3.UnitZ);
        var foot = new Vector3(0, 0, end - (way * plate.Depth));
        return new(
            port,
            new((place.Radius * away) + foot + (plate.Wall * up), away, up.Cross(away), up),
            new PlaneFootprint(0),
            new PlaneFootprint(-plate.Wall),
            plate.Wall);
    }

    private static PortSite OnShape(PortDesign port, HeadShape shape)
    {
        var footing = HeadFooting.Of(shape, port)!;
        return new(port, shape.Frame.Place(footing.Axis), footing.Outside, footing.Inside, shape.Wall)
        {
            AxisRadius = footing.AxisRadius,
        };
    }
}
