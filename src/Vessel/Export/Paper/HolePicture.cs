using System.Globalization;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Paper;

/// <summary>A drilled part with its holes numbered, at a scale of the usual series; axes at the origin of its coordinates.</summary>
internal static class HolePicture
{
    private const double Letter = 2.5;

    private const int MostOfField = 2000;

    /// <summary>The picture in the upper part of the room, and how much of its height it takes, mm.</summary>
    public static (IEnumerable<Item> Items, double Height) Of(BuiltPart built, Box2 room)
    {
        var part = built.Part;
        var lines = Outline(built).Concat(part.Fields.Where(field => field.Lattice.Count <= MostOfField).Select(field =>
            Pattern.On(field.Lattice, new Circle(default, field.Diameter / 2, Pens.Thin)))).ToList();
        var bounds = Placing.Bounds(lines).Join(default(Point2));
        // Room for the numbers and the axes' ends.
        const double edge = 8;
        var scale = Scale.Largest(bounds.Width, bounds.Height, room.Width - (2 * edge), room.Height - (2 * edge));
        var by = new Point2(
            ((room.Min.U + room.Max.U) / 2) - (scale.Factor * (bounds.Min.U + bounds.Max.U) / 2),
            room.Max.V - edge - (scale.Factor * bounds.Max.V));
        Point2 On(Point2 p) => (scale.Factor * p) + by;
        return (
            [
                .. lines.Select(item => Placing.Placed(item, scale.Factor, by)),
                .. part.Holes.SelectMany(hole => Numbered(hole, On(hole.Center), scale.Factor)),
                .. Axes(On(default)),
                Text.Left($"scale {scale.Name}", new(room.Min.U, room.Max.V - Letter), Letter),
            ],
            (scale.Factor * bounds.Height) + (2 * edge));
    }

    /// <summary>The flat's lines; of a part that is drilled after forming, its silhouette along its axis.</summary>
    private static IEnumerable<Item> Outline(BuiltPart built)
    {
        var part = built.Part;
        if (part.Flat is not null && part.Holes.All(hole => hole.Outline is not null))
            return [built.Fitted!.Metal];
        var radius = built.Mesh.Vertices.Max(v => new Point2(v.X, v.Y).Length);
        return part.Holes.Select(hole => new Circle(hole.Center, hole.Diameter / 2, Pens.Edge)).Prepend(new(default, radius, Pens.Edge));
    }

    private static IEnumerable<Item> Numbered(Hole hole, Point2 at, double scale)
    {
        // A window's own centre is only where its number stands.
        if (hole.Shape is not null)
        {
            return
            [
                .. hole.ToolPlaces.SelectMany(place => Stroke.Cross(at + (scale * (place - hole.Center)), 1.2, Pens.Thin)),
                Text.Middle(hole.Number.ToString(CultureInfo.InvariantCulture), at - new Point2(0, Letter / 2), Letter),
            ];
        }

        var arm = (scale * hole.Diameter / 2) + 1.5;
        var number = Text.Left(
            hole.Number.ToString(CultureInfo.InvariantCulture), at + new Point2((0.7 * arm) + 0.8, (0.7 * arm) + 0.8), Letter);
        return [.. Stroke.Cross(at, arm, Pens.Thin), number];
    }

    private static IEnumerable<Item> Axes(Point2 origin)
    {
        const double length = 9;
        foreach (var (way, name) in new[] { (new Point2(1, 0), "x"), (new Point2(0, 1), "y") })
        {
            var tip = origin + (length * way);
            yield return Stroke.Line(origin, tip, Pens.Edge);
            yield return Stroke.Through([tip - (1.6 * way) + (0.7 * way.Turned), tip, tip - (1.6 * way) - (0.7 * way.Turned)], Pens.Edge);
            yield return Text.Middle(name, tip + (1.8 * way), 2);
        }
    }
}
