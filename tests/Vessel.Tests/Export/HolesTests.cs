using System.Text;
using Vessel.Export.Drawing;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class HolesTests
{
    private static readonly ThreadSize _thread = new("M14x1.5", "M14x1.5", 14, 1.5, 12.5, "made up");

    private static readonly Part _part = Flats.PartWith(
        Flats.Cover,
        new Hole(1, "drain", new(30, 40), null, 12.5, 8, _thread, HoleMethod.DrillAndTap, null),
        new Hole(2, "bore of inlet, upper", new(-3, 0), null, 35, null, null, HoleMethod.StepDrill, new(17, 60)),
        new Hole(3, "bore of outlet", new(0, 100), null, 35.5, null, null, HoleMethod.StepDrill, null));

    [Fact]
    public void Each_hole_has_a_row_of_fifteen_cells()
    {
        var rows = Rows();

        Assert.Equal(4, rows.Length);
        Assert.Equal(
            "number,x_mm,y_mm,polar_radius_mm,polar_angle_deg,outside_arc_mm,outside_height_mm,diameter_mm,size,"
                + "drill_at_mm,depth,thread,tap_drill_mm,made_by,purpose",
            rows[0]);
        Assert.All(rows.Where(row => !row.Contains('"', StringComparison.Ordinal)), row => Assert.Equal(14, row.Count(c => c == ',')));
    }

    [Fact]
    public void A_tapped_hole_names_thread_drill_and_depth() =>
        Assert.Equal("1,30,40,50,53.1,,,12.5,,,8,M14x1.5,12.5,drill and tap,drain", Rows()[1]);

    [Fact]
    public void A_hole_on_a_tube_is_also_given_on_its_outside() =>
        Assert.Equal("2,-3,0,3,180,17,60,35,,,through,,,hole saw 35,\"bore of inlet, upper\"", Rows()[2]);

    [Fact]
    public void A_hole_that_is_no_tools_size_says_what_to_take_and_what_to_file() =>
        Assert.Contains("hole saw 35 and file out 0.3 mm all round", Rows()[3], StringComparison.Ordinal);

    /// <summary>A tube of 34 with 0.2 mm all round takes a hole of 34.4: a saw of 35 leaves (35 - 34) / 2.</summary>
    [Theory]
    [InlineData(34.4, 0.2, "hole saw 35: gap 0.5 mm all round, not 0.2; or step drill 34 and file out 0.2 mm all round")]
    [InlineData(34.4, null, "step drill 34 and file out 0.2 mm all round")]
    [InlineData(34.0, 0.2, "step drill 34")]
    [InlineData(35.05, null, "hole saw 35")]
    [InlineData(12.53, 0.2, "drill")]
    [InlineData(150.0, 0.2, "hole saw 146 and file out 2 mm all round")]
    [InlineData(170.0, 0.2, "mark out, cut and file to the line")]
    public void The_nearest_tool_is_named_with_what_it_does_to_the_gap(double diameter, double? clearance, string words)
    {
        var hole = new Hole(1, "bore", default, null, diameter, null, null, HoleMethods.Through(diameter), null) { Clearance = clearance };

        Assert.Equal(words, HoleWords.MadeBy(hole));
        // In a column the tool alone.
        Assert.True(HoleWords.Tool(hole) is var tool && tool.Length <= 20 && words.StartsWith(tool.Split(',')[0], StringComparison.Ordinal)
            || tool == "cut, file");
    }

    /// <summary>Corner drills touch both sides of their corner; a slot's touch three of its sides.</summary>
    [Theory]
    [InlineData(18, 16, 3, "18 x 16, R3", 4)]
    [InlineData(18, 16, 0, "18 x 16, sharp corners", 4)]
    [InlineData(9, 14, 4.5, "slot 9 x 14", 2)]
    [InlineData(14, 9, 4.5, "slot 14 x 9", 2)]
    public void A_window_is_told_by_its_size_and_where_its_drill_goes(double width, double height, double corner, string words, int places)
    {
        var shape = new HoleShape(width, height, corner);
        var hole = new Hole(1, "window", new(100, 50), null, shape.Drill, null, null, HoleMethod.CutOrFile, null) { Shape = shape };

        Assert.Equal(words, shape.Text(NoteText.Length));
        Assert.Equal(places, hole.ToolPlaces.Length);
        Assert.Equal(new Point2(100, 50), (1.0 / places) * hole.ToolPlaces.Aggregate((a, b) => a + b));
        Assert.Equal(width / 2, hole.ToolPlaces.Max(at => at.U) + (shape.Drill / 2) - 100, 1e-9);
        Assert.Equal(height / 2, hole.ToolPlaces.Max(at => at.V) + (shape.Drill / 2) - 50, 1e-9);
    }

    /// <summary>The cup's windows are 18 x 16 on the outside of 62 x 2 from tube, so that flat and outside are one.</summary>
    [Fact]
    public void No_window_of_the_launch_breather_is_told_as_one_drill()
    {
        var skirt = Plans.Of("harbour-launch-breather.yaml").Assembly.Parts.Single(part => part.Id == "cap-skirt");
        using var stream = new MemoryStream();
        HolesCsv.Write(skirt, stream);
        var rows = Encoding.UTF8.GetString(stream.ToArray()).Split("\r\n", StringSplitOptions.RemoveEmptyEntries)[1..];

        Assert.Equal(4, rows.Length);
        Assert.All(rows, row => Assert.Contains("\"18 x 16, R3\"", row, StringComparison.Ordinal));
        Assert.All(rows, row => Assert.Contains("drill 6 in the four corners", row, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(DxfRelease.R2000)]
    [InlineData(DxfRelease.R12)]
    public void The_layout_marks_each_centre_and_cuts_nothing(DxfRelease release)
    {
        var probe = DxfProbe.Check(Layout(_part, release));

        Assert.DoesNotContain(probe.Entities, entity => entity[8] == "CUT");
        Assert.Equal(_part.Holes.Select(hole => hole.Center), probe.On("MARK", "CIRCLE").Select(circle => circle.Point(10)));
        Assert.Equal(_part.Holes.Select(hole => hole.Diameter / 2), probe.On("MARK", "CIRCLE").Select(circle => circle.Real(40)));
        Assert.Equal(
            _part.Holes.SelectMany(hole => new[] { hole.Center, hole.Center }),
            probe.On("MARK", "LINE").Select(line => 0.5 * (line.Point(10) + line.Point(11))));
    }

    [Fact]
    public void A_part_without_a_flat_has_a_layout_of_its_holes_alone()
    {
        var bung = _part with { Flat = null };

        var probe = DxfProbe.Check(Layout(bung, DxfRelease.R2000));

        Assert.Equal(3, probe.On("MARK", "CIRCLE").Count());
        Assert.DoesNotContain(probe.Polylines, polyline => polyline.Layer == "NOTE");
    }

    private static string[] Rows()
    {
        using var stream = new MemoryStream();
        HolesCsv.Write(_part, stream);
        return Encoding.UTF8.GetString(stream.ToArray()).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
    }

    private static byte[] Layout(Part part, DxfRelease release)
    {
        using var stream = new MemoryStream();
        HolesDxf.Write(part, part.Flat is { } flat ? FittedFlat.Of(flat, 0.01) : null, new(release), stream);
        return stream.ToArray();
    }
}
