using System.Text;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class HolesTests
{
    private static readonly ThreadSize _thread = new("M14x1.5", "M14x1.5", 14, 12.5, null, "made up");

    private static readonly Part _part = Flats.PartWith(
        Flats.Cover,
        new Hole(1, "drain", new(30, 40), null, 12.5, 8, _thread, HoleMethod.DrillAndTap, null),
        new Hole(2, "bore of inlet, upper", new(-3, 0), null, 35, null, null, HoleMethod.StepDrill, new(17, 60)),
        new Hole(3, "bore of outlet", new(0, 100), null, 35.5, null, null, HoleMethod.StepDrill, null));

    [Fact]
    public void Each_hole_has_a_row_of_thirteen_cells()
    {
        var rows = Rows();

        Assert.Equal(4, rows.Length);
        Assert.Equal(
            "number,x_mm,y_mm,polar_radius_mm,polar_angle_deg,outside_arc_mm,outside_height_mm,diameter_mm,depth,thread,tap_drill_mm,made_by,purpose",
            rows[0]);
        Assert.All(rows.Where(row => !row.Contains('"', StringComparison.Ordinal)), row => Assert.Equal(12, row.Count(c => c == ',')));
    }

    [Fact]
    public void A_tapped_hole_names_thread_drill_and_depth() =>
        Assert.Equal("1,30,40,50,53.1,,,12.5,8,M14x1.5,12.5,drill and tap,drain", Rows()[1]);

    [Fact]
    public void A_hole_on_a_tube_is_also_given_on_its_outside() =>
        Assert.Equal("2,-3,0,3,180,17,60,35,through,,,step drill,\"bore of inlet, upper\"", Rows()[2]);

    [Fact]
    public void A_hole_that_no_step_drill_reaches_says_how_it_is_made_instead() =>
        Assert.Contains("hole saw", Rows()[3], StringComparison.Ordinal);

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
