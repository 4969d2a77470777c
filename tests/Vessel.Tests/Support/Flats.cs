using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Tests.Support;

/// <summary>Made-up parts for the exporters: a float-chamber cover with a saddle, a slot and a drain.</summary>
internal static class Flats
{
    public static Flat Cover { get; } = new(
        FlatKind.Sheet,
        new(
            Loop2.Polygon(new(0, 0), new(210, 0), new(210, 90), new(0, 90)),
            [
                Loop2.Circle(new(30, 45), 6, clockwise: true),
                Moved(Curves.Reversed(Curves.Saddle(62, 20, 18)), new(90, 45)),
                Slot(new(170, 45)),
            ]),
        [new LineMark(new(0, 45), new(210, 45)), new TextMark("COVER 2x 3.0 mm", new(60, 80), 4, 0)],
        [new BendLine(new(190, 0), new(190, 90), Math.PI / 2, 4, 0.42)],
        ["Cover, mild steel, 3 mm, 2 pieces", "Outside face up. 100%%d \u00B0 ^ \u00D8 \u00FC"],
        new PlaneDevelopment(),
        "outer face");

    public static Part PartWith(Flat? flat, params ImmutableArray<Hole> holes)
    {
        var filler = new Filler("rod", 7.8, "made up");
        var steel = new Material("mild steel", MaterialFamily.MildSteel, 7.85, filler, "made up");
        return new(
            "cover", "cover", PartKind.Lid, steel, 3, new("sheet", 210, 90, 3, 400), [Frame3.Identity], new Solid([]),
            1, flat, holes, "top");
    }

    private static Loop2 Slot(Point2 c) => new([
        new Line2(c + new Point2(10, 4), c + new Point2(10, -4)),
        new Arc2(c + new Point2(6, -4), 4, 0, -Math.PI / 2),
        new Line2(c + new Point2(6, -8), c + new Point2(-6, -8)),
        new Line2(c + new Point2(-6, -8), c + new Point2(-6, 4)),
        new Line2(c + new Point2(-6, 4), c + new Point2(10, 4)),
    ]);

    private static Loop2 Moved(Loop2 loop, Point2 by) => new([.. loop.Edges.Select(edge => new GraphCurve2(
        t => edge.At(t) + by, edge.Slope, edge.Domain, edge.Breaks))]);
}
