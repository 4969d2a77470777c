using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A hole's outline moved outward by a clearance, measured square to the curve on the flat.</summary>
/// <param name="radius">Of the cylinder on which the flat keeps its lengths.</param>
internal sealed class WidenedOutline(WallOutline outline, double radius, double clearance)
{
    /// <summary>(angle, height), as <see cref="WallOutline.At"/>.</summary>
    public Point2 At(double t)
    {
        var place = outline.At(t);
        if (clearance == 0)
            return place;
        var moved = clearance * Outward(t);
        return place + new Point2(moved.U / radius, moved.V);
    }

    /// <summary>d At / dt. The turn of the normal is a difference quotient: good to 1e-9 of the clearance.</summary>
    public Point2 Slope(double t)
    {
        var slope = outline.Slope(t);
        if (clearance == 0)
            return slope;
        var turned = clearance * Slopes.Of(Outward, t, WallOutline.Domain);
        return slope + new Point2(turned.U / radius, turned.V);
    }

    /// <summary>Unit normal on the flat. The outline runs counter-clockwise, so outward lies to the right of its slope.</summary>
    private Point2 Outward(double t)
    {
        var slope = outline.Slope(t);
        return -new Point2(radius * slope.U, slope.V).Unit().Turned;
    }
}
