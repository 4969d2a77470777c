using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Dishes;

/// <summary>
/// The equal strips of a dished head, from the rim to the polar cap, drawn dished as they are welded; those that ports stand in are drilled
/// along the ports' axes. A strip's frame has the head's z = 0 at the origin, the pole on -Z and the strip's middle over +X.
/// </summary>
internal static class GorePart
{
    public static Part Build(
        GoreShape shape, SheetPiece piece, ImmutableArray<PortSite> sites, HeadSite site, Welds welds)
    {
        var (head, gores) = (shape.Design, shape.Gores);
        ImmutableArray<Frame3> placed = [.. piece.Numbers.Select(i => Placed(site, shape.Direction(i + 0.5)))];
        var (outer, inner) = DrilledDome.Faces(shape.Head);
        var dome = new DrilledDome(placed[0], outer, inner, Round(shape, outer, inner), shape.Strips.Volume / gores.Count, sites);
        return new(
            piece.Id,
            piece.Name,
            PartKind.Gore,
            head.Material,
            head.Wall,
            StockPieces.Rectangle(2 * shape.Flat.HalfWidth(0), shape.Flat.Length, head.Wall, head.Material),
            placed,
            dome.Solid,
            dome.Volume,
            GoreFlat.Of(shape, piece, welds),
            [.. sites.Select((port, i) => port.HoleInHost(i + 1, port.On(shape.Head.Frame), null))],
            gores.Path)
        {
            Forming = Forming.Dished,
            Making = $"cut {(placed.Length > 1 ? $"{placed.Length} x " : "")}{piece.Name}, deburr, roll and dish to a gauge",
            StockNote = "starting size, to be bent and dished",
        };
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
    private static Rim Round(GoreShape shape, Surface outer, Surface inner)
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
        return new(new(0, 4), Corners(shape), On(shape.Head.Outer, outer), On(shape.Head.Inner, inner));
    }

    /// <summary>Corners of the gore, all four but the first, and where a meridian passes from one curve to the next.</summary>
    private static ImmutableArray<double> Corners(GoreShape shape)
    {
        var joints = shape.Flat.Meridian.Joints.Select(along => 1 - (along / shape.Flat.Length)).ToList();
        return [.. joints.Select(share => 1 + share).Concat(joints.Select(share => 4 - share)).Concat([1, 2, 3]).Order()];
    }
}
