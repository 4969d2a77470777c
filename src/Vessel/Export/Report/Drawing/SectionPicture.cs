using System.Collections.Immutable;
using Vessel.Export.Dxf;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>The cut through the vessel's axis: cut faces hatched, every part with its name at the end of a line.</summary>
internal static class SectionPicture
{
    private const double NameRow = Sheet.TextHeight * 1.35;
    private const int Hatches = 4;

    public static bool Has(AxialSection section) => section.Pieces.Any(piece => Faces(piece).Any());

    public static void Draw(AxialSection section, Html html)
    {
        var pieces = section.Pieces
            .Select(piece => (piece.Name, Faces: Faces(piece).ToImmutableArray()))
            .Where(piece => piece.Faces.Length > 0)
            .ToList();
        var box = pieces.SelectMany(piece => piece.Faces).SelectMany(face => face).Aggregate(Box2.Empty, (all, p) => all.Join(p));
        var longest = pieces.Max(piece => piece.Name.Length);
        var sheet = Sheet.For(html, box, (12, 12, 40 + (Math.Min(longest, 24) * Sheet.TextHeight * 0.55), 12));
        var names = Names(pieces, sheet);
        var floor = names.Count > 0 ? names.Max(name => name.At.V) + Sheet.TextHeight : 0;
        if (floor > sheet.Frame.Max.V)
            sheet = sheet with { Frame = new(sheet.Frame.Min, new(sheet.Frame.Max.U, floor)) };
        sheet.Draw(
            "section",
            "Section through the vessel's axis",
            $"Cut at {Sizes.Degrees(section.Angle)} degrees, seen square to the cut: {string.Join(", ", pieces.Select(piece => piece.Name))}.",
            () =>
            {
                DefineHatches(html);
                for (var i = 0; i < pieces.Count; i++)
                {
                    html.Mark(
                        "path",
                        ("class", $"face hatch-{Sizes.Count(i % Hatches)}"),
                        ("d", string.Concat(pieces[i].Faces.Select(face => SvgPath.Polygon(face, sheet)))));
                }

                foreach (var (name, point, at) in names)
                {
                    sheet.Line("leader", point, at - new Point2(6, Sheet.TextHeight / 3));
                    sheet.Path("arrow", SvgPath.Circle(point, 2.5));
                    sheet.Text("name", at, name, "start");
                }
            });
    }

    private static IEnumerable<ImmutableArray<Point2>> Faces(SectionPiece piece) =>
        piece.Outlines.Select(SectionDxf.Plain).Where(points => points.Length > 2);

    /// <summary>To the right of the picture, in the order of height, a row each.</summary>
    private static List<(string Name, Point2 Point, Point2 At)> Names(
        List<(string Name, ImmutableArray<ImmutableArray<Point2>> Faces)> pieces, Sheet sheet)
    {
        var names = pieces
            .Select(piece => (piece.Name, Point: sheet.At(Inside(piece.Faces))))
            .OrderBy(name => name.Point.V)
            .ToList();
        var x = sheet.Scale * sheet.Model.Width + 30;
        var heights = names.ConvertAll(name => name.Point.V);
        for (var i = 0; i < heights.Count; i++)
            heights[i] = Math.Max(heights[i], i == 0 ? Sheet.TextHeight : heights[i - 1] + NameRow);
        var shift = Math.Min(0, (sheet.Scale * sheet.Model.Height) - heights[^1]);
        var least = Sheet.TextHeight;
        for (var i = heights.Count - 1; i >= 0; i--)
        {
            var ceiling = i == heights.Count - 1 ? heights[i] + shift : Math.Min(heights[i], heights[i + 1] - NameRow);
            heights[i] = Math.Max(ceiling, least + (i * NameRow));
        }

        return [.. names.Select((name, i) => (name.Name, name.Point, new Point2(x, heights[i])))];
    }

    /// <summary>In the metal of the cut face furthest to the right, in the middle of its height.</summary>
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

    /// <summary>Four kinds of lines, so that neighbours differ without colour (ISO 128-3: 45 degrees, spacing, direction).</summary>
    private static void DefineHatches(Html html) => html.Tag("defs", () =>
    {
        for (var i = 0; i < Hatches; i++)
        {
            var spacing = Sheet.T(i < 2 ? 6 : 10);
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
