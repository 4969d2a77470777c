using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>The inside of the vessel: rooms, and the openings between them and to the outside.</summary>
public sealed record Cavity(ImmutableArray<Room> Rooms, ImmutableArray<Opening> Openings)
{
    /// <summary>Height of the lowest place inside, mm in the vessel's frame.</summary>
    public double Floor => Rooms.Min(room => room.Floor);

    public double Ceiling => Rooms.Max(room => room.Ceiling);

    /// <summary>What can hold oil below a level, upright, mm3.</summary>
    public double VolumeBelow(double level) => Rooms.Sum(room => room.VolumeBelow(level));

    public static Cavity Of(VesselDesign vessel, ImmutableArray<PortSite> sites) => new(
        [Room.Of(vessel, sites)],
        [.. sites.Select(Opening.Of)]);
}

/// <summary>One room: a stack of solids of revolution, less what stands in it.</summary>
public sealed record Room(string Name, ImmutableArray<RoomPiece> Pieces, ImmutableArray<Internal> Internals)
{
    public double Floor => Pieces.Min(piece => piece.Heights.Start);

    public double Ceiling => Pieces.Max(piece => piece.Heights.End);

    public double VolumeBelow(double level) =>
        Pieces.Sum(piece => piece.VolumeBelow(level)) - Internals.Sum(part => part.VolumeBelow(level));

    internal static Room Of(VesselDesign vessel, ImmutableArray<PortSite> sites)
    {
        var shell = vessel.Shell;
        var (bottom, top) = (HeadSite.Bottom(vessel).Frame.Origin.Z, HeadSite.Top(vessel).Frame.Origin.Z);
        var pieces = ImmutableArray.CreateBuilder<RoomPiece>();
        if (vessel.Bottom is HemisphereHead below)
            pieces.Add(new SpherePiece(new(bottom - shell.OuterRadius + below.Wall, bottom), shell.OuterRadius - below.Wall, bottom));
        pieces.Add(new CylinderPiece(new(bottom, top), shell.InnerRadius));
        if (vessel.Top is HemisphereHead above)
            pieces.Add(new SpherePiece(new(top, top + shell.OuterRadius - above.Wall), shell.OuterRadius - above.Wall, top));
        return new("vessel", pieces.ToImmutable(),
            [.. sites.Where(site => site.Port.Joint == PortJoint.SetIn).Select(site => new Internal(site))]);
    }
}

/// <summary>A slice of a room between two heights. A closed set.</summary>
public abstract record RoomPiece(Interval Heights)
{
    /// <summary>mm3 below a level, at most the whole piece.</summary>
    public abstract double VolumeBelow(double level);
}

public sealed record CylinderPiece(Interval Heights, double Radius) : RoomPiece(Heights)
{
    public override double VolumeBelow(double level) =>
        Math.PI * Radius * Radius * (Math.Clamp(level, Heights.Start, Heights.End) - Heights.Start);
}

/// <summary>Half a ball, upper or lower, round a centre at a height.</summary>
public sealed record SpherePiece(Interval Heights, double Radius, double Centre) : RoomPiece(Heights)
{
    public override double VolumeBelow(double level)
    {
        // From the ball's south pole up to z: pi h^2 (3 R - h) / 3.
        double Below(double z) => z - Centre + Radius is var h ? Math.PI * h * h * ((3 * Radius) - h) / 3 : 0;
        return Below(Math.Clamp(level, Heights.Start, Heights.End)) - Below(Heights.Start);
    }
}

/// <summary>The part of a set-in tube that stands inside; its metal takes up room.</summary>
public sealed record Internal(PortSite Site)
{
    private const int Turnings = 180;

    /// <summary>Two-point Gauss through the wall.</summary>
    private static readonly double[] _depths = [0.5 - (0.5 / Math.Sqrt(3)), 0.5 + (0.5 / Math.Sqrt(3))];

    /// <summary>
    /// mm3 of metal below a level. Line by line along the tube, so the level cuts each exactly; the sum round the tube
    /// converges fast while no line is cut, and to about 1e-4 of the metal where some are.
    /// </summary>
    public double VolumeBelow(double level)
    {
        var (inner, outer) = (Site.Port.BoreRadius, Site.Port.OuterRadius);
        var sum = 0.0;
        foreach (var depth in _depths)
        {
            var r = inner + (depth * (outer - inner));
            for (var i = 0; i < Turnings; i++)
                sum += r * LengthBelow(r, Turns.Full * (i + 0.5) / Turnings, level);
        }

        return sum * (outer - inner) / _depths.Length * Turns.Full / Turnings;
    }

    private double LengthBelow(double r, double phi, double level)
    {
        var (from, to) = (Site.InnerEnd, Site.Inside.Reach(r, phi));
        if (to <= from)
            return 0;
        var start = Site.Frame.ToOuter(Footprint.OnLine(r, phi, from)).Z;
        var rise = Site.Frame.Z.Z;
        if (Math.Abs(rise) < 1e-12)
            return start < level ? to - from : 0;
        var cut = from + ((level - start) / rise);
        return rise > 0 ? Math.Clamp(cut, from, to) - from : to - Math.Clamp(cut, from, to);
    }
}

/// <summary>Where a port's mouth opens into a room.</summary>
/// <param name="Port">Its name.</param>
/// <param name="Closed">Plugged in use: a bung.</param>
/// <param name="Area">Of the bore, square to its axis, mm2.</param>
/// <param name="Lowest">Height of the mouth's lowest point, mm in the vessel's frame.</param>
/// <param name="Highest">Of its highest point.</param>
public sealed record Opening(string Port, bool Closed, double Area, double Lowest, double Highest)
{
    private const int Samples = 360;

    internal static Opening Of(PortSite site)
    {
        var port = site.Port;
        var heights = Enumerable.Range(0, Samples)
            .Select(i => Mouth(site, Turns.Full * i / Samples).Z)
            .ToList();
        return new(
            port.Name, port.Thread is not null, Math.PI * port.BoreRadius * port.BoreRadius, heights.Min(), heights.Max());
    }

    /// <summary>A point of the rim where the bore opens: the tube's own end when set in, else the host's inner face.</summary>
    private static Vector3 Mouth(PortSite site, double phi)
    {
        var r = site.Port.BoreRadius;
        if (site.Port.Joint == PortJoint.SetIn)
            return site.Frame.ToOuter(Footprint.OnLine(r, phi, site.InnerEnd));
        // A bore that grazes the inner face is told by the outer one.
        return site.Frame.ToOuter(site.Inside.Takes(r) ? site.Inside.At(r, phi) : site.Outside.At(r, phi));
    }
}
