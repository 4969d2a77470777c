using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>How a half sphere is divided into gores and a polar cap. Lengths in mm, angles in radians.</summary>
/// <param name="OuterRadius">Of the sphere.</param>
/// <param name="Flat">Of one gore, with what bending and dishing it means.</param>
/// <param name="CapAngle">From the pole to the seam of the polar cap; cuts are square to the sphere, so it is the same on
/// both faces.</param>
public sealed record GoreShape(GoreDesign Gores, double OuterRadius, double Wall, double CapAngle, GoreDevelopment Flat)
{
    public double MeanRadius => OuterRadius - (Wall / 2);

    public double InnerRadius => OuterRadius - Wall;

    /// <summary>From a gore's centre line to its side, round the axis.</summary>
    public double HalfAngle => Flat.HalfAngle;

    /// <summary>Of the polar cap's seam, from the equator.</summary>
    public double CapLatitude => (Math.PI / 2) - CapAngle;

    public static GoreShape Of(PortHost end, HemisphereHead head, GoreDesign gores, VesselDesign vessel)
    {
        var outer = vessel.Shell.OuterRadius;
        var mean = outer - (head.Wall / 2);
        var capAngle = Math.Asin(gores.CapDiameter / 2 / mean);
        var length = mean * ((Math.PI / 2) - capAngle);
        return new(gores, outer, head.Wall, capAngle, new(mean, Math.PI / gores.Count, length, end == PortHost.Top));
    }

    /// <summary>Direction from the axis, in the vessel, of a seam; the first is number 0, the middle of the first gore 0.5.</summary>
    public double Direction(double seam) => Gores.SeamAngle + (2 * HalfAngle * seam);
}
