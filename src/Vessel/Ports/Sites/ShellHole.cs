using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Ports;

/// <summary>The hole that a port needs in the shell, and its footprint on the outside.</summary>
/// <param name="Hole">Outlines through the wall, from inside to outside; one where the hole is square to it.</param>
/// <param name="Footprint">Of the port's own outside on the shell's outside.</param>
/// <param name="OuterRadius">Of the shell at the port's height, mm.</param>
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

    /// <summary>Angles of hole and footprint together, radians; may run below 0 or beyond a whole turn.</summary>
    public Interval Angles => new(
        Hole.Append(Footprint).Min(o => o.Min(p => p.Angle)), Hole.Append(Footprint).Max(o => o.Max(p => p.Angle)));

    /// <summary>The bore of what stands on the host; outside and clearance of what passes in.</summary>
    public static double HoleRadius(PortDesign port) =>
        port.Joint == PortJoint.SetOn ? port.BoreRadius : port.OuterRadius + port.Clearance;

    /// <summary>Whether the hole's walls run along the port's axis, rather than square to the sheet.</summary>
    public static bool RunsThroughWall(ShellCourse course, PortDesign port) =>
        port.Joint == PortJoint.SetIn || course is { IsRolled: false } or { IsCone: true };

    /// <summary>Null for a port that does not fit its shell, or of which a size is at fault.</summary>
    public static ShellHole? Of(ShellDesign whole, PortDesign port)
    {
        if (whole.CourseAt(port.Place.Height) is { IsCone: true } cone)
            return OnCone(cone, port);
        var shell = whole.At(port.Place.Height);
        var radius = HoleRadius(port);
        var side = Math.Abs(port.Place.Offset);
        var deepest = RunsThroughWall(shell.Course, port) ? shell.InnerRadius : shell.OuterRadius;
        // Written so that a NaN does not pass.
        if (!(radius > 0 && shell.InnerRadius > 0
            && side + radius <= deepest && side + port.OuterRadius <= shell.OuterRadius
            && double.IsFinite(port.Place.Height + port.Place.Angle + port.Place.Tilt)))
        {
            return null;
        }

        var axis = new BranchAxis(shell, port.Place);
        var layers = RunsThroughWall(shell.Course, port)
            ? Enumerable.Range(0, Layers).Select(i => shell.InnerRadius + (shell.Wall * i / (Layers - 1)))
            : [shell.OuterRadius];
        return new ShellHole(port, [.. layers.Select(r => Outline(axis, r, radius))],
            Outline(axis, shell.OuterRadius, port.OuterRadius), shell.OuterRadius);
    }

    /// <summary>Drilled along the port's axis.</summary>
    private static ShellHole? OnCone(ShellCourse cone, PortDesign port)
    {
        var (radius, place) = (HoleRadius(port), port.Place);
        // Written so that a NaN does not pass.
        if (!(radius > 0 && Math.Min(cone.Low, cone.High) > cone.Across && double.IsFinite(cone.Start + cone.Height + cone.Low + cone.High)
            && Math.Abs(place.Offset) < cone.OuterAt(place.Height) && double.IsFinite(place.Height + place.Angle + place.Tilt)))
        {
            return null;
        }

        var footing = ShellFooting.Of(cone.Shell, port);
        return footing.Outside.Takes(Math.Max(radius, port.OuterRadius)) && footing.Inside.Takes(radius)
            ? new(port, [Outline(footing.Inside, radius), Outline(footing.Outside, radius)], Outline(footing.Outside, port.OuterRadius),
                cone.OuterAt(place.Height))
            : null;

        ImmutableArray<(double Angle, double Z)> Outline(Footprint face, double around) =>
        [
            .. BranchAxis.Phis().Select(phi =>
            {
                var at = footing.At(face, around, phi);
                return (place.Angle + Turns.Signed(Math.Atan2(at.Y, at.X) - place.Angle), at.Z);
            }),
        ];
    }

    /// <summary>The outlines spread out, mm along a cylinder of a radius from <paramref name="shift"/> and up.</summary>
    public ImmutableArray<Polygon> Flat(double radius, double shift = 0) =>
    [
        .. Hole.Select(outline => new Polygon(new LinearRing(
            [.. outline.Append(outline[0]).Select(p => new Coordinate((p.Angle * radius) + shift, p.Z))]))),
    ];

    private static ImmutableArray<(double Angle, double Z)> Outline(BranchAxis axis, double onRadius, double around) =>
        [.. BranchAxis.Phis().Select(phi => axis.OnCylinder(onRadius, around, phi))];
}
