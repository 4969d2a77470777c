using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Export.General;

/// <summary>What the drawing is of, at which scale, and how it is to be read. Date and names are left for the pen.</summary>
internal static class TitleBlock
{
    public const double Height = 46;

    public static IEnumerable<Item> Items(Build build, Scale scale, PaperSize sheet, Box2 box)
    {
        var design = build.Assembly.Design;
        var thirdAngle = build.Options.WeldSymbols == WeldSymbols.Aws;
        yield return Stroke.Rectangle(box, Pens.Edge);
        var (left, width) = (box.Min.U, box.Width);
        double Line(int row) => box.Max.V - (row * Height / 6);
        for (var row = 1; row < 6; row++)
            yield return Stroke.Line(new(left, Line(row)), new(box.Max.U, Line(row)), Pens.Thin);
        yield return Stroke.Line(new(left + (width / 2), Line(1)), new(left + (width / 2), Line(4)), Pens.Thin);
        (int Row, double Column, string Name, string Value)[] cells =
        [
            (0, 0, "vessel", design.Name),
            (1, 0, "revision", design.Revision),
            (1, 0.5, "scale, sheet", $"{scale.Name}, {sheet.Name}"),
            (
                2, 0, "lengths, weld symbols, process",
                $"{new TwoUnits(design.Units).Names.First}; {(thirdAngle ? "AWS A2.4" : "ISO 2553, system A")}; TIG {Currents(build)}"),
            (2, 0.5, "leak test", LeakWords.Named(design.LeakTest)),
            (3, 0, "drawn, date", string.Empty),
            (3, 0.5, "checked, date", string.Empty),
            (4, 0, "by", $"vessel {build.Options.ToolVersion}; heights from the shell's lower edge"),
            (5, 0, "caution", "Vented vessel; not rated or certified for pressure."),
        ];
        foreach (var (row, column, name, value) in cells)
        {
            var at = new Point2(left + 1.5 + (column * width), Line(row));
            var room = (row is 1 or 2 or 3 ? width / 2 : width) - 3 - (row == 5 || row == 4 ? 14 : 0);
            yield return Text.Left(name, at - new Point2(0, 2.6), 1.5);
            yield return Text.Fitted(value, at - new Point2(0, 6.4), row == 0 ? 3.2 : 2.5, room);
        }

        foreach (var item in Projection(new(box.Max.U - 10, (Line(5) + box.Min.V) / 2), thirdAngle))
            yield return item;
    }

    private static string Currents(Build build) =>
        string.Join(", ", build.Plan.Procedures.Select(weld => weld.Current).Distinct().Order().Select(current => current.Short()));

    /// <summary>The cone from both sides that tells how views are placed (ISO 5456-2).</summary>
    private static IEnumerable<Item> Projection(Point2 middle, bool thirdAngle)
    {
        var (circles, cone) = thirdAngle ? (new Point2(-4, 0), new Point2(3.5, 0)) : (new Point2(4, 0), new Point2(-3.5, 0));
        foreach (var radius in new[] { 1.3, 2.6 })
            yield return new Circle(middle + circles, radius, Pens.Thin);
        // The small end lies on the left: whoever sees both circles looks from there.
        yield return Stroke.Through(
            [.. new Point2[] { new(-2.5, 1.3), new(2.5, 2.6), new(2.5, -2.6), new(-2.5, -1.3) }.Select(p => middle + cone + p)], Pens.Thin,
            closed: true);
        yield return Stroke.Line(middle - new Point2(8, 0), middle + new Point2(8, 0), Pens.Chain);
    }
}
