using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Report.Drawing;

/// <summary>A flat as it is cut, outside face up, with its size, its bends, its marks and the places of its holes.</summary>
internal static class FlatPicture
{
    /// <summary>More places than these stand in the table of holes alone.</summary>
    private const int MostPlaces = 9;

    /// <summary>More holes of a pattern than these are left out: they say no more, and the page grows.</summary>
    private const int MostOfField = 4000;

    /// <summary>Marked text that would be smaller than this on the page is left out, page units.</summary>
    private const double LeastText = 7;

    public static void Draw(BuiltPart built, Sizes sizes, Html html)
    {
        var (part, fitted) = (built.Part, built.Fitted!);
        var box = CurveMeasures.Bounds(fitted.Flat.Cut.Outer);
        var (xs, ys) = (Places(part, hole => hole.Center.U, sizes), Places(part, hole => hole.Center.V, sizes));
        var sheet = Sheet.For(html, box, (60, 60, ys.Count > 0 ? 90 : 24, xs.Count > 0 ? 90 : 24));
        sheet.Draw(
            $"flat-{part.Id}",
            $"Flat of {part.Name}",
            Description(built, sizes),
            () =>
            {
                DrawMetal(fitted, sheet);
                DrawMarks(fitted, sheet);
                DrawBends(fitted.Flat, sizes, sheet);
                DrawHoleNumbers(part, sizes, sheet);
                DrawSize(box, sizes, sheet);
                if (xs.Count + ys.Count > 0)
                    DrawPlaces(box, xs, ys, sizes, sheet);
            });
    }

    public static bool Leaves(Part part) => part.Fields.Any(field => field.Lattice.Count > MostOfField);

    private static string Description(BuiltPart built, Sizes sizes)
    {
        var (figures, bends) = (built.Figures!, built.Part.Flat!.Bends.Length);
        return $"Outside face up, {sizes.WithUnit(figures.WidthMm)} by {sizes.WithUnit(figures.HeightMm)}, "
            + $"{Sizes.Count(figures.Holes)} holes, {Sizes.Count(bends)} bends.";
    }

    private static void DrawMetal(FittedFlat fitted, Sheet sheet)
    {
        sheet.Path("cut", string.Concat(fitted.Holes.Prepend(fitted.Outer).Select(outline => SvgPath.Of(outline, sheet))));
        foreach (var field in fitted.Flat.Cut.Fields.Where(field => field.Count <= MostOfField))
        {
            sheet.Html.Mark(
                "path",
                ("class", "dots"),
                ("stroke-width", Sheet.T(2 * field.HoleRadius * sheet.Scale)),
                ("d", SvgPath.Dots(field.Centers(), sheet)));
        }
    }

    private static void DrawMarks(FittedFlat fitted, Sheet sheet)
    {
        var lines = fitted.Flat.Marks.OfType<LineMark>().Select(line => $"M{Sheet.P(sheet.At(line.A))}L{Sheet.P(sheet.At(line.B))}");
        sheet.Path("mark", string.Concat(lines.Concat(fitted.Scribed.Select(path => SvgPath.OfChain(path.Vertices, path.IsClosed, sheet)))));
        foreach (var text in fitted.Flat.Marks.OfType<TextMark>())
        {
            // A capital is seven tenths of the size of most typefaces.
            var size = sheet.Scale * text.Height / 0.7;
            var foot = text.Center - (text.Height / 2 * Point2.Polar(1, text.Angle).Turned);
            if (size >= LeastText)
                sheet.Text("marked", sheet.At(foot), text.Text, turn: Turns.ToDegrees(text.Angle), size: size);
        }
    }

    private static void DrawBends(Flat flat, Sizes sizes, Sheet sheet)
    {
        foreach (var (i, bend) in flat.Bends.Index())
        {
            var (a, b) = (sheet.At(bend.A), sheet.At(bend.B));
            sheet.Line("bend", a, b);
            var upright = Math.Abs(b.U - a.U) < Math.Abs(b.V - a.V);
            var aside = upright ? new Point2(-5, 0) : new Point2(0, -5);
            sheet.Text("figure", a + (0.25 * (b - a)) + aside, BendLine.Words(i + 1, bend.Angle, sizes.Fine(bend.InsideRadius)), turn: upright ? 90 : 0);
        }
    }

    /// <summary>Beside the hole, or in it where it is large enough.</summary>
    private static void DrawHoleNumbers(Part part, Sizes sizes, Sheet sheet)
    {
        if (part.Holes.Length > 3 * MostPlaces)
            return;
        foreach (var hole in part.Holes.Where(hole => hole.Outline is not null))
        {
            var (at, radius) = (sheet.At(hole.Center), sheet.Scale * hole.Diameter / 2);
            var text = $"{Sizes.Count(hole.Number)}: {hole.Shape?.Text(sizes.Fine) ?? $"\u2300{sizes.Fine(hole.Diameter)}"}";
            var roomy = radius > 2.5 * Sheet.TextHeight;
            // Names of ports are marked above their holes.
            var place = roomy ? new Point2(0, -radius / 2) : new Point2((radius * 0.75) + 4, (radius * 0.75) + Sheet.TextHeight);
            sheet.Text("hole", at + place, text, roomy ? "middle" : "start");
        }
    }

    private static void DrawSize(Box2 box, Sizes sizes, Sheet sheet)
    {
        var (low, right, left) = (sheet.At(box.Min), sheet.At(new(box.Max.U, box.Min.V)), sheet.At(new(box.Min.U, box.Max.V)));
        Dimensions.Across(sheet, low, right, low.V + 42, sizes.Length(box.Width));
        Dimensions.Up(sheet, low, left, low.U - 36, sizes.Length(box.Height));
    }

    /// <summary>Of the holes' centres along one axis, each once; none where they are too many.</summary>
    private static List<double> Places(Part part, Func<Hole, double> along, Sizes sizes)
    {
        var places = part.Holes
            .Where(hole => hole.Outline is not null)
            .Select(along)
            .DistinctBy(sizes.Length)
            .ToList();
        return places.Count > MostPlaces ? [] : places;
    }

    private static void DrawPlaces(Box2 box, List<double> xs, List<double> ys, Sizes sizes, Sheet sheet)
    {
        var corner = sheet.At(box.Max);
        Dimensions.Abscissae(
            sheet, xs.Select(x => (sheet.At(new(x, 0)).U, corner.V - 4, $"x {sizes.Length(x)}")), corner.V - 22);
        Dimensions.Ordinates(
            sheet, ys.Select(y => (sheet.At(new(0, y)).V, corner.U + 4, $"y {sizes.Length(y)}")), corner.U + 22);
        var origin = sheet.At(default);
        sheet.Path("origin", $"{SvgPath.Circle(origin, 5)}M{Sheet.T(origin.U - 9)} {Sheet.T(origin.V)}h18"
            + $"M{Sheet.T(origin.U)} {Sheet.T(origin.V - 9)}v18");
    }
}
