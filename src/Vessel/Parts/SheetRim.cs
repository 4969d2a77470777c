using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// Round one of several sheets of a cylinder, as welded, without the gaps: along its lower edge, up a seam, back along its upper edge,
/// down the other seam. The seams' walls are radial, and so is what the notches leave of the edges.
/// </summary>
internal sealed class SheetRim(NotchedEdge low, NotchedEdge high, Interval sheet, Interval heights)
{
    /// <summary>Where the upper edge begins.</summary>
    private double Back => low.Domain.Length + 1;

    private double Down => Back + high.Domain.Length;

    /// <param name="lift">Height in the vessel from which the part's count, mm.</param>
    public Rim Of(CylinderSurface outer, CylinderSurface inner, double lift)
    {
        Point2 On(CylinderSurface face, double t, double w) => face.ChartOf(Place(t, w) - new Point2(0, lift));
        Vector3 Through(double t, double w)
        {
            var (place, radius) = (Place(t, w), outer.Radius + (w * (inner.Radius - outer.Radius)));
            return new(radius * Math.Cos(place.U), radius * Math.Sin(place.U), place.V - lift);
        }

        return new(
            new(0, Down + 1),
            [
                .. low.Breaks.Select(t => t - low.Domain.Start),
                low.Domain.Length,
                Back,
                .. high.Breaks.Select(t => Back + high.Domain.End - t).Order(),
                Down,
            ],
            t => On(outer, t, 0),
            t => On(inner, t, 1),
            0,
            low.IsPlain && high.IsPlain ? null : Through);
    }

    /// <summary>Angle round the vessel and height.</summary>
    private Point2 Place(double t, double w) =>
        t < low.Domain.Length ? On(low, low.Domain.Start + t, w)
        : t < Back ? new(sheet.End, heights.At(t - low.Domain.Length))
        : t < Down ? On(high, high.Domain.End - (t - Back), w)
        : new(sheet.Start, heights.At(1 - (t - Down)));

    private static Point2 On(NotchedEdge edge, double t, double w) => new(edge.AngleAt(t, w), edge.At(t, w).Z);
}
