using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>
/// The sheet: front view, side view and section in a row; the view from above stands below the front view in first angle and
/// above it in third, with the lists and the title block beside it. In first angle the side view is that from the left.
/// </summary>
internal static class DrawingSheet
{
    private const double Border = 10;

    private const double Lists = 118;

    /// <summary>Room on the left of a view for heights, on its right for symbols, mm.</summary>
    private const double OnLeft = 23;

    private const double OnRight = 38;

    /// <summary>Above and below a view for its name and lengths, mm.</summary>
    private const double Above = 11;

    public static Page Of(Build build)
    {
        var thirdAngle = build.Options.WeldSymbols == WeldSymbols.Aws;
        var sheet = (build.Options.Paper.Size == PaperSize.Letter ? PaperSize.Tabloid : PaperSize.A3).Lying;
        var drawn = DrawnVessel.Of(build, thirdAngle);
        var inner = new Box2(new(Border, Border), new(sheet.Width - Border, sheet.Height - Border));
        var (scale, placed) = Placed(drawn, inner, thirdAngle);
        // Beside the view from above.
        var top = placed[^1].Cell;
        var room = new Box2(new(top.Max.U, top.Min.V), new(inner.Max.U, top.Max.V));
        // In third angle the name of a view stands below.
        var foot = room.Min.V + (thirdAngle ? 4 : 0);
        var title = new Box2(new(room.Max.U - Lists, foot), new(room.Max.U, foot + TitleBlock.Height));
        return new(
            sheet.Width,
            sheet.Height,
            [
                Stroke.Rectangle(inner, Pens.Border),
                .. placed.SelectMany(Picture),
                .. CuttingPlane(build.Section.Angle, placed[^1]),
                .. SheetNotes.Items(build, drawn, placed),
                .. SheetLists.Parts(build, new(room.Min, new(title.Min.U - 4, room.Max.V))),
                .. SheetLists.Ports(build, new(new(title.Min.U, title.Max.V + 2), room.Max - new Point2(1.5, 0))),
                .. TitleBlock.Items(build, scale, sheet, title),
            ]);
    }

    /// <summary>The largest usual scale at which the row and both heights fit; what is left over parts them evenly.</summary>
    private static (Scale Scale, ImmutableArray<PlacedView> Views) Placed(DrawnVessel drawn, Box2 room, bool thirdAngle)
    {
        DrawnView[] row = [drawn.Front, drawn.Side, drawn.Section];
        // The view from above shares the first column.
        double[] widths = [Math.Max(drawn.Front.Bounds.Width, drawn.Top.Bounds.Width), drawn.Side.Bounds.Width, drawn.Section.Bounds.Width];
        var (high, low) = (row.Max(view => view.Bounds.Height), drawn.Top.Bounds.Height);
        var scale = Scale.Largest(widths.Sum(), high + low, room.Width - (3 * (OnLeft + OnRight)), room.Height - (4 * Above));
        var spareWidth = (room.Width - (scale.Factor * widths.Sum())) / 3;
        var spareHeight = (room.Height - (scale.Factor * (high + low))) / 2;
        var topHeight = (scale.Factor * low) + spareHeight;
        var (upper, lower) = thirdAngle
            ? (new Interval(room.Max.V - topHeight, room.Max.V), new Interval(room.Min.V, room.Max.V - topHeight))
            : (new Interval(room.Min.V, room.Min.V + topHeight), new Interval(room.Min.V + topHeight, room.Max.V));
        var placed = ImmutableArray.CreateBuilder<PlacedView>();
        // Heights are in line all along the row, and what is across in the front view with the view from above.
        var level = Middle(row.Select(view => view.Bounds.Min.V), row.Select(view => view.Bounds.Max.V));
        var aside = Middle([drawn.Front.Bounds.Min.U, drawn.Top.Bounds.Min.U], [drawn.Front.Bounds.Max.U, drawn.Top.Bounds.Max.U]);
        var left = room.Min.U;
        foreach (var (view, width) in row.Zip(widths))
        {
            var right = left + (scale.Factor * width) + spareWidth;
            var cell = new Box2(new(left, lower.Start), new(right, lower.End));
            placed.Add(PlacedView.In(
                cell, view, scale.Factor, new(view == drawn.Front ? aside : (view.Bounds.Min.U + view.Bounds.Max.U) / 2, level), Shift));
            left = right;
        }

        var above = new Box2(new(room.Min.U, upper.Start), new(placed[0].Cell.Max.U, upper.End));
        placed.Add(PlacedView.In(above, drawn.Top, scale.Factor, new(aside, (drawn.Top.Bounds.Min.V + drawn.Top.Bounds.Max.V) / 2), Shift));
        return (scale, placed.ToImmutable());
    }

    private static Point2 Shift => new((OnLeft - OnRight) / 2, 0);

    private static double Middle(IEnumerable<double> low, IEnumerable<double> high) => (low.Min() + high.Max()) / 2;

    /// <summary>Where the section lies, in the view from above, with arrows the way it is looked at.</summary>
    private static IEnumerable<Item> CuttingPlane(double angle, PlacedView top)
    {
        var view = View.Section(angle);
        var (along, look) = (top.Drawn.View.On(view.Right), -top.Drawn.View.On(view.Toward));
        var axis = top.On(default(Point2));
        var reach = 0.5 * Math.Max(top.Box.Width, top.Box.Height);
        foreach (var end in new[] { axis + ((reach + 2) * along), axis - ((reach + 2) * along) })
        {
            var inner = end + ((end - axis).Length > 4 ? (4 / (end - axis).Length) * (axis - end) : default);
            yield return Stroke.Line(end, inner, Pens.Border);
            yield return Stroke.Line(end - (5 * look), end, Pens.Thin);
            yield return Dimensions.Arrow(end, -look, 2);
            yield return Text.Middle("A", end - (5 * look) - (2.5 * look), 3);
        }
    }

    private static IEnumerable<Item> Picture(PlacedView placed)
    {
        foreach (var (_, outlines) in placed.Drawn.Cut)
            yield return new Area(
                [.. outlines.Select(outline => Stroke.Through(outline.Select(placed.On), Pens.Face, closed: true))], Pens.Face);
        foreach (var (_, points) in placed.Drawn.Lines)
            yield return Stroke.Through([.. points.Select(placed.On)], Pens.Edge);
        // The vessel's axis; end on it is a point.
        var (low, high) = (placed.Box.Min.V - 3, placed.Box.Max.V + 3);
        var axis = placed.On(default(Point2));
        yield return Stroke.Line(new(axis.U, low), new(axis.U, high), Pens.Chain);
        if (placed.Drawn.View == View.Top)
            yield return Stroke.Line(new(placed.Box.Min.U - 3, axis.V), new(placed.Box.Max.U + 3, axis.V), Pens.Chain);
        yield return Text.Left(placed.Drawn.View.Name, new(placed.Cell.Min.U + 3, placed.Cell.Max.V - 5), 2.8);
    }
}

/// <summary>A view on the sheet.</summary>
/// <param name="Cell">Share of the sheet that the view has.</param>
/// <param name="Box">What its lines take of that.</param>
internal sealed record PlacedView(DrawnView Drawn, Box2 Cell, Box2 Box, double Factor, Point2 Shift)
{
    /// <param name="middle">Middle of the view's coordinates, put into the middle of the cell.</param>
    /// <param name="aside">Shift from the middle of the cell.</param>
    public static PlacedView In(Box2 cell, DrawnView drawn, double factor, Point2 middle, Point2 aside)
    {
        var shift = (0.5 * (cell.Min + cell.Max)) + aside - (factor * middle);
        var bounds = drawn.Bounds.IsEmpty ? new Box2(default, default) : drawn.Bounds;
        return new(drawn, cell, new((factor * bounds.Min) + shift, (factor * bounds.Max) + shift), factor, shift);
    }

    public Point2 On(Point2 seen) => (Factor * seen) + Shift;

    public Point2 On(Vector3 place) => On(Drawn.View.On(place));
}
