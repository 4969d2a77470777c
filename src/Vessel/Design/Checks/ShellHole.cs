using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>The hole that a port needs in the shell, and its footprint on the outside.</summary>
/// <param name="Hole">Outlines through the wall, from inside to outside; one where the hole is square to it.</param>
/// <param name="Footprint">Of the port's own outside on the shell's outside.</param>
internal sealed record ShellHole(
    PortDesign Port,
    ImmutableArray<ImmutableArray<(double Angle, double Z)>> Hole,
    ImmutableArray<(double Angle, double Z)> Footprint,
    double OuterRadius)
{
    private const int Layers = 3;

    public double HoleLow => Hole.Min(o => o.Min(p => p.Z));

    public double HoleHigh => Hole.Max(o => o.Max(p => p.Z));

    public double FootLow => Footprint.Min(p => p.Z);

    public double FootHigh => Footprint.Max(p => p.Z);

    /// <summary>Of hole and footprint together, radians; may run below 0 or beyond a whole turn.</summary>
    public Interval Angles => new(
        Hole.Append(Footprint).Min(o => o.Min(p => p.Angle)), Hole.Append(Footprint).Max(o => o.Max(p => p.Angle)));

    /// <summary>The bore of what stands on the host; outside and clearance of what passes in.</summary>
    public static double HoleRadius(PortDesign port) =>
        port.Joint == PortJoint.SetOn ? port.BoreRadius : port.OuterRadius + port.Clearance;

    /// <summary>Whether the hole's walls run along the port's axis, rather than square to the sheet.</summary>
    public static bool RunsThroughWall(ShellDesign shell, PortDesign port) =>
        port.Joint == PortJoint.SetIn || shell.MadeFrom == StockForm.Tube;

    /// <summary>Null for a port that does not fit its shell, or of which a size is at fault.</summary>
    public static ShellHole? Of(ShellDesign shell, PortDesign port)
    {
        var radius = HoleRadius(port);
        var side = Math.Abs(port.Place.Offset);
        var deepest = RunsThroughWall(shell, port) ? shell.InnerRadius : shell.OuterRadius;
        // Written so that a NaN does not pass.
        if (!(radius > 0 && shell.InnerRadius > 0
            && side + radius <= deepest && side + port.OuterRadius <= shell.OuterRadius
            && double.IsFinite(port.Place.Height + port.Place.Angle + port.Place.Tilt)))
        {
            return null;
        }

        var axis = new BranchAxis(shell, port.Place);
        var layers = RunsThroughWall(shell, port)
            ? Enumerable.Range(0, Layers).Select(i => shell.InnerRadius + (shell.Wall * i / (Layers - 1)))
            : [shell.OuterRadius];
        return new ShellHole(port, [.. layers.Select(r => Outline(axis, r, radius))],
            Outline(axis, shell.OuterRadius, port.OuterRadius), shell.OuterRadius);
    }

    /// <summary>The outlines on the outside laid flat, mm along it from <paramref name="shift"/> and up.</summary>
    public ImmutableArray<Polygon> Flat(double shift = 0) =>
    [
        .. Hole.Select(outline => new Polygon(new LinearRing(
            [.. outline.Append(outline[0]).Select(p => new Coordinate((p.Angle * OuterRadius) + shift, p.Z))]))),
    ];

    private static ImmutableArray<(double Angle, double Z)> Outline(BranchAxis axis, double onRadius, double around) =>
        [.. BranchAxis.Phis().Select(phi => axis.OnCylinder(onRadius, around, phi))];
}
