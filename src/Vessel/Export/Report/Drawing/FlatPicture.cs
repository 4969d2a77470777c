using Vessel.Export.Drawing;
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

    /// <summary>Capitals of marked text that would be lower than this on the page are left out, page units.</summary>
    private const double LeastLetter = 4.9;

    private static readonly Dimensions _dimensions = new(Picture.Letter);

    private static readonly Interval _anywhere = new(double.NegativeInfinity, double.PositiveInfinity);

    public static Picture Of(BuiltPart built, Sizes sizes)
    {
        var (part, fitted, figures) = (built.Part, built.Fitted!, built.Figures!);
        var scale = new PageScale(CurveMeasures.Bounds(fitted.Flat.Cut.Outer));
        var (xs, ys) = (Places(part, hole => hole.Center.U, sizes), Places(part, hole => hole.Center.V, sizes));
        return new(
            $"flat-{part.Id}",
            $"Flat of {part.Name}",
            $"Outside face up, {sizes.WithUnit(figures.WidthMm)} by {sizes.WithUnit(figures.HeightMm)}, "
            + $"{Sizes.Count(figures.Holes)} holes, {Sizes.Count(fitted.Flat.Bends.Length)} bends.",
            scale.Frame(60, 60, ys.Count > 0 ? 90 : 24, xs.Count > 0 ? 90 : 24),
            [
                scale.On(fitted.Metal),
                .. FlatDrawing.Fields(fitted).OfType<Pattern>().Where(field => field.Count <= MostOfField).Select(scale.On),
                .. fitted.Marks.Select(scale.On).Where(mark => mark is not Text { Height: < LeastLetter }),
                .. FlatDrawing.Bends(fitted.Flat).Select(scale.On),
                .. fitted.Flat.Bends.Select((bend, i) => FlatDrawing.BendWords(
                    scale.On(bend.A), scale.On(bend.B), BendLine.Words(i + 1, bend.Angle, sizes.Fine(bend.InsideRadius)), Picture.Letter,
                    Pens.Figure)),
                .. HoleNumbers(part, sizes, scale),
                .. Size(scale, sizes),
                .. xs.Count + ys.Count > 0 ? HolePlaces(scale, xs, ys, sizes) : [],
            ]);
    }

    public static bool Leaves(Part part) => part.Fields.Any(field => field.Lattice.Count > MostOfField);

    /// <summary>Beside the hole, or in it where it is large enough.</summary>
    private static IEnumerable<Item> HoleNumbers(Part part, Sizes sizes, PageScale scale)
    {
        foreach (var hole in part.Holes.Where(hole => hole.Outline is not null && part.Holes.Length <= 3 * MostPlaces))
        {
            var (at, radius) = (scale.On(hole.Center), scale.Factor * hole.Diameter / 2);
            var text = $"{Sizes.Count(hole.Number)}: {hole.Shape?.Text(sizes.Fine) ?? $"\u2300{sizes.Fine(hole.Diameter)}"}";
            // Names of ports are marked above their holes.
            yield return radius > 2.5 * Picture.TextHeight
                ? new Text(text, at + new Point2(0, radius / 2), Picture.Letter, Pens.Hole, Anchor.Middle)
                : new Text(text, at + new Point2((radius * 0.75) + 4, -(radius * 0.75) - Picture.TextHeight), Picture.Letter, Pens.Hole);
        }
    }

    private static IEnumerable<Item> Size(PageScale scale, Sizes sizes)
    {
        var box = scale.Model;
        var (low, right, left) = (scale.On(box.Min), scale.On(new Point2(box.Max.U, box.Min.V)),
            scale.On(new Point2(box.Min.U, box.Max.V)));
        return _dimensions.Between(low, right, new(0, -42), sizes.Length(box.Width))
            .Concat(_dimensions.Between(low, left, new(-36, 0), sizes.Length(box.Height)));
    }

    /// <summary>Places of the holes' centres along one axis, each once; none where they are too many.</summary>
    private static List<double> Places(Part part, Func<Hole, double> along, Sizes sizes)
    {
        var places = part.Holes
            .Where(hole => hole.Outline is not null)
            .Select(along)
            .DistinctBy(sizes.Length)
            .ToList();
        return places.Count > MostPlaces ? [] : places;
    }

    private static IEnumerable<Item> HolePlaces(PageScale scale, List<double> xs, List<double> ys, Sizes sizes)
    {
        var corner = scale.On(scale.Model.Max);
        var origin = scale.On(default(Point2));
        return
        [
            .. _dimensions.Ordinates(
                xs.Select(x => (scale.On(new Point2(x, 0)).U, $"x {sizes.Length(x)}")), corner.V + 4, corner.V + 22, _anywhere,
                upright: true),
            .. _dimensions.Ordinates(
                ys.Select(y => (scale.On(new Point2(0, y)).V, $"y {sizes.Length(y)}")), corner.U + 4, corner.U + 22, _anywhere),
            new Circle(origin, 5, Pens.Origin),
            .. Stroke.Cross(origin, 9, Pens.Origin),
        ];
    }
}
