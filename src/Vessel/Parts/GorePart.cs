using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// One of the equal strips of a dished head, from the rim to the polar cap, drawn dished as it is welded. Its frame has
/// the head's z = 0 at the origin, the pole on -Z and the strip's middle over +X.
/// </summary>
internal static class GorePart
{
    public static Part Build(PortHost end, GoreShape shape, VesselDesign vessel, WeldNumbers welds)
    {
        var (name, head, gores) = (Names.Gore(end), shape.Design, shape.Gores);
        var site = HeadSite.Of(end, vessel);
        return new(
            Slug.Of(name),
            name,
            PartKind.Gore,
            head.Material,
            head.Wall,
            StockPieces.Rectangle(2 * shape.Flat.HalfWidth(0), shape.Flat.Length, head.Wall, head.Material),
            [.. Enumerable.Range(0, gores.Count).Select(i => Placed(site, shape.Direction(i + 0.5)))],
            Shaped(shape),
            shape.Strips.Volume / gores.Count,
            GoreFlat.Of(end, shape, welds),
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
    /// One rim round four sides: the head's rim, one meridian, the polar cap's circle, the other meridian. All cuts are square to
    /// the wall, so both faces have the same angles.
    /// </summary>
    private static Solid Shaped(GoreShape shape)
    {
        var (side, reach) = (shape.HalfAngle, shape.Flat.Length);
        (double Angle, double FromRim) Place(double t) => t switch
        {
            < 1 => (side * ((2 * t) - 1), 0),
            < 2 => (side, reach * (t - 1)),
            < 3 => (side * (5 - (2 * t)), reach),
            _ => (-side, reach * (4 - t)),
        };
        Func<double, Point2> On(Profile face, Surface surface) => t =>
        {
            var (angle, fromRim) = Place(t);
            var (ring, height) = shape.Across(face, shape.Middle.Length - fromRim);
            return DrilledDome.ChartOf(surface, new(ring * Math.Cos(angle), ring * Math.Sin(angle), height));
        };
        var (outer, inner) = DrilledDome.Faces(shape.Head);
        return ThickSolid.Of(
            outer, inner, false,
            [new(new(0, 4), Corners(shape), On(shape.Head.Outer, outer), On(shape.Head.Inner, inner))]);
    }

    /// <summary>Its four corners but the first, and where a meridian passes from one curve to the next.</summary>
    private static ImmutableArray<double> Corners(GoreShape shape)
    {
        var joints = shape.Flat.Meridian.Joints.Select(along => 1 - (along / shape.Flat.Length)).ToList();
        return [.. joints.Select(share => 1 + share).Concat(joints.Select(share => 4 - share)).Concat([1, 2, 3]).Order()];
    }
}
