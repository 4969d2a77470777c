using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A hole's outline moved outward by a clearance, measured square to the curve on the flat.</summary>
/// <param name="radius">Of the cylinder on which the flat keeps its lengths.</param>
internal sealed class WidenedOutline(WallOutline outline, double radius, double clearance)
{
    /// <summary>(angle, height), as <see cref="WallOutline.At"/>.</summary>
    public Point2 At(double t)
    {
        var on = OnFlat(t);
        if (clearance == 0)
            return new(on.U / radius, on.V);
        // The outline runs counter-clockwise, so outward lies to the right of its slope.
        var moved = on - (clearance * Slopes.Of(OnFlat, t, WallOutline.Domain).Unit().Turned);
        return new(moved.U / radius, moved.V);
    }

    private Point2 OnFlat(double t)
    {
        var place = outline.At(t);
        return new(radius * place.U, place.V);
    }
}
