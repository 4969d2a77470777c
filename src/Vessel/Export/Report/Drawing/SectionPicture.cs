using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>The cut through the vessel's axis: cut faces hatched, every part with its name at the end of a line.</summary>
internal static class SectionPicture
{
    private const double NameRow = Picture.TextHeight * 1.35;

    public static bool Has(AxialSection section) => section.Pieces.Any(piece => Faces(piece).Any());

    public static void Write(AxialSection section, Html html)
    {
        var pieces = section.Pieces
            .Select(piece => (piece.Name, Faces: Faces(piece).ToImmutableArray()))
            .Where(piece => piece.Faces.Length > 0)
            .ToList();
        var scale =
            new PageScale(pieces.SelectMany(piece => piece.Faces).SelectMany(face => face).Aggregate(Box2.Empty, (all, p) => all.Join(p)));
        var points = pieces.Select(piece => (piece.Name, Point: scale.On(Inside(piece.Faces)))).OrderBy(name => name.Point.V).ToList();
        var height = Math.Max(scale.Factor * scale.Model.Height, pieces.Count * NameRow);
        var heights = Spread.Of([.. points.Select(name => (name.Point.V, NameRow))], new(-height, 0));
        var longest = pieces.Max(piece => piece.Name.Length);
        var frame = scale.Frame(12, 12, 40 + (Math.Min(longest, 24) * Picture.TextHeight * 0.55), 12);
        new Picture(
            "section",
            "Section through the vessel's axis",
            $"Cut at {Sizes.Degrees(section.Angle)} degrees, seen square to the cut: "
                + $"{string.Join(", ", pieces.Select(piece => piece.Name))}.",
            frame.Join(new Point2(0, -height)),
            [
                .. pieces.Select((piece, i) => scale.On(Metal(piece.Faces, Pens.Hatched[i % Pens.Hatched.Length]))),
                .. points.Zip(heights).SelectMany(name => Named(
                    name.First.Name, name.First.Point, new((scale.Factor * scale.Model.Width) + 30, name.Second - (Picture.Letter / 2)))),
            ]).Write(html, () => DefineHatches(html));
    }

    private static IEnumerable<ImmutableArray<Point2>> Faces(SectionPiece piece) =>
        piece.Outlines.Select(SectionDxf.Plain).Where(points => points.Length > 2);

    private static Area Metal(ImmutableArray<ImmutableArray<Point2>> faces, Pen pen) =>
        new([.. faces.Select(face => Stroke.Through(face, pen, closed: true))], pen);

    private static Item[] Named(string name, Point2 point, Point2 at) =>
    [
        Stroke.Line(point, at + new Point2(-6, Picture.TextHeight / 3), Pens.Leader),
        new Circle(point, 2.5, Pens.Arrow),
        new Text(name, at, Picture.Letter, Pens.Name),
    ];

    /// <summary>Place in the metal of the cut face furthest to the right, in the middle of its height.</summary>
    private static Point2 Inside(ImmutableArray<ImmutableArray<Point2>> faces)
    {
        var face = faces.MaxBy(points => points.Max(p => p.U))!;
        var (low, high) = (face.Min(p => p.V), face.Max(p => p.V));
        // A line at no vertex's height in particular; metal lies between its last two crossings.
        var v = low + (0.4871 * (high - low));
        var crossings = new List<double>();
        foreach (var outline in faces)
        {
            for (var i = 0; i < outline.Length; i++)
            {
                var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
                if (a.V <= v != b.V <= v)
                    crossings.Add(a.U + ((v - a.V) / (b.V - a.V) * (b.U - a.U)));
            }
        }

        crossings.Sort();
        return crossings.Count < 2 ? face[0] : new((crossings[^1] + crossings[^2]) / 2, v);
    }

    /// <summary>The lines of <see cref="Pens.Hatched"/>.</summary>
    private static void DefineHatches(Html html) => html.Tag("defs", () =>
    {
        for (var i = 0; i < Pens.Hatched.Length; i++)
        {
            var spacing = Sizes.Count(i < 2 ? 6 : 10);
            html.Tag(
                "pattern",
                () =>
                {
                    html.Mark("rect", ("class", "ground"), ("width", spacing), ("height", spacing));
                    html.Mark("path", ("class", "hatch"), ("d", $"M0 0v{spacing}"));
                },
                ("id", $"hatch-{Sizes.Count(i)}"),
                ("width", spacing),
                ("height", spacing),
                ("patternUnits", "userSpaceOnUse"),
                ("patternTransform", i % 2 == 0 ? "rotate(45)" : "rotate(-45)"));
        }
    });
}
