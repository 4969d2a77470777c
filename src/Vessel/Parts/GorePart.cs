using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// One of the equal strips of a half sphere, from the equator to the polar cap, drawn dished as it is welded. Its frame has
/// the sphere's centre at the origin, the pole on -Z and the strip's middle over +X.
/// </summary>
internal static class GorePart
{
    public static Part Build(PortHost end, HemisphereHead head, GoreDesign gores, VesselDesign vessel, WeldNumbers welds)
    {
        var name = Names.Gore(end);
        var site = HeadSite.Of(end, vessel);
        var shape = GoreShape.Of(end, head, gores, vessel);
        return new(
            Slug.Of(name),
            name,
            PartKind.Gore,
            head.Material,
            head.Wall,
            StockPieces.Rectangle(2 * shape.Flat.HalfWidth(0), shape.Flat.Length, head.Wall, head.Material),
            [.. Enumerable.Range(0, gores.Count).Select(i => Placed(site, shape.Direction(i + 0.5)))],
            Shaped(shape),
            Volume(shape),
            GoreFlat.Of(end, head, shape, welds),
            [],
            gores.Path);
    }

    private static Frame3 Placed(HeadSite site, double middle)
    {
        var (sin, cos) = Math.SinCos(middle);
        var (x, z) = (new Vector3(cos, sin, 0), -site.Frame.Z);
        return new(site.Frame.Origin, x, z.Cross(x), z);
    }

    /// <summary>
    /// One rim round four sides: equator, one meridian, the polar cap's circle, the other meridian. All cuts are square to
    /// the sphere, so both faces have the same angles.
    /// </summary>
    private static Solid Shaped(GoreShape shape)
    {
        var (side, top) = (shape.HalfAngle, shape.CapLatitude);
        (double Angle, double Latitude) Place(double t) => t switch
        {
            < 1 => (side * ((2 * t) - 1), 0),
            < 2 => (side, top * (t - 1)),
            < 3 => (side * (5 - (2 * t)), top),
            _ => (-side, top * (4 - t)),
        };
        Func<double, Point2> On(SphereSurface sphere) => t =>
        {
            var (angle, latitude) = Place(t);
            return sphere.ChartOf((Math.PI / 2) - latitude, angle);
        };
        var (outer, inner) = (new SphereSurface(shape.OuterRadius), new SphereSurface(shape.InnerRadius));
        return ThickSolid.Of(outer, inner, false, [new(new(0, 4), [1, 2, 3], On(outer), On(inner))]);
    }

    /// <summary>Its share of the zone between equator and cap: a sector of the sphere in three directions at once.</summary>
    private static double Volume(GoreShape shape)
    {
        var (outer, inner) = (shape.OuterRadius, shape.InnerRadius);
        var wall = (Math.Pow(outer, 3) - Math.Pow(inner, 3)) / 3;
        return 2 * shape.HalfAngle * Math.Sin(shape.CapLatitude) * wall;
    }
}
