using System.Globalization;
using Vessel.Design;
using Vessel.Export.Paper;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Paper;

public sealed class HoleTablesTests
{
    public static TheoryData<HolePattern, double> Patterns => new()
    {
        { HolePattern.Staggered60, 0 }, { HolePattern.Staggered45, 18 }, { HolePattern.Square, 25 }, { HolePattern.Rings, 18 },
    };

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Rows_of_a_pattern_lead_back_to_every_hole(HolePattern pattern, double bore)
    {
        var lattice = HoleFields.Of(new("p", 3, 5, pattern, 3), 40, bore / 2);
        var part = Flats.PartWith(Flats.Cover) with { Fields = [new("pattern", lattice, "p")] };
        var rows = HoleTables.Of(part, new(UserUnits.Millimetres)).Single().Rows;

        var found = rows.SelectMany(row => pattern == HolePattern.Rings ? Ring(row) : Row(row)).ToList();

        // Figures are given to 0.01 mm and 0.1 degree: of a step over the ring at most 0.05 degree a hole.
        var near = pattern == HolePattern.Rings ? 40 * 0.05 * Math.PI / 180 * 50 : 0.01;
        Assert.Equal(lattice.Count, found.Count);
        Assert.All(lattice.Centers(), center => Assert.True(found.Min(hole => (hole - center).Length) < Math.Min(near, 2.4)));
    }

    [Fact]
    public void A_hole_stands_in_both_units()
    {
        var hole = new Hole(1, "bore", new(25.4, -50.8), Loop2.Circle(new(25.4, -50.8), 6.35, clockwise: true), 12.7, null, null,
            HoleMethod.Drill, null);
        var table = HoleTables.Of(Flats.PartWith(Flats.Cover, hole), new(UserUnits.Inches)).Single();
        var row = table.Header.Zip(table.Rows.Single()).ToDictionary(cell => cell.First, cell => cell.Second);

        Assert.Equal(("1.000", "-2.000", "25.40", "-50.80"), (row["x in"], row["y in"], row["x mm"], row["y mm"]));
        Assert.Equal(("0.500", "12.70", "-63.4"), (row["size in"], row["size mm"], row["angle deg"]));
    }

    [Fact]
    public void A_window_is_followed_by_the_places_of_its_corner_drill()
    {
        var hole = new Hole(
            7, "window", new(30, 20), Loop2.Circle(new(30, 20), 1, clockwise: true), 6, null, null, HoleMethod.CutOrFile, null)
        {
            Shape = new(18, 16, 3),
        };
        var table = HoleTables.Of(Flats.PartWith(Flats.Cover, hole), new(UserUnits.Millimetres)).Single();
        string Cell(int row, string column) => table.Rows[row][table.Header.IndexOf(column)];

        Assert.Equal(["7", "7a", "7b", "7c", "7d"], table.Rows.Select(row => row[0]));
        Assert.All(table.Rows, row => Assert.Equal(table.Header.Length, row.Length));
        Assert.Equal("18.00 x 16.00, R3.00", Cell(0, "size mm"));
        // 9 - 3 and 8 - 3 from the middle.
        Assert.Equal([("24.00", "15.00"), ("36.00", "15.00"), ("36.00", "25.00"), ("24.00", "25.00")],
            Enumerable.Range(1, 4).Select(i => (Cell(i, "x mm"), Cell(i, "y mm"))));
        Assert.All(Enumerable.Range(1, 4), i => Assert.Equal(("6.00", "drill"), (Cell(i, "size mm"), Cell(i, "how"))));
    }

    [Fact]
    public void A_mark_of_the_dipstick_stands_at_the_level_that_holds_its_volume()
    {
        var assembly = Compiler.Assemble(Designs.Sound);
        var marks = GaugeScale.Of(assembly.Attitude, assembly.Capacity).ToList();

        Assert.InRange(marks.Count, 8, 24);
        // The search ends within 20 mm3 or a micrometre of the level: 10 mm3 over a bore of 110 mm.
        Assert.All(marks, mark => Assert.Equal(mark.Volume, assembly.Attitude.VolumeBelow(mark.Height), 20.1));
        Assert.All(marks.Zip(marks.Skip(1)), pair => Assert.True(pair.First.Height < pair.Second.Height));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<Point2> Row(IReadOnlyList<string> row)
    {
        var (count, y, first, last) = ((int)Number(row[1]), Number(row[2]), Number(row[3]), Number(row[4]));
        return Enumerable.Range(0, count).Select(i => new Point2(count == 1 ? first : first + ((last - first) * i / (count - 1)), y));
    }

    private static IEnumerable<Point2> Ring(IReadOnlyList<string> row)
    {
        var (count, radius, first, step) = ((int)Number(row[1]), Number(row[2]), Number(row[4]), Number(row[5]));
        return Enumerable.Range(0, count).Select(i => Point2.Polar(radius, (first + (i * step)) * Math.PI / 180));
    }
}
