using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Stock;

public sealed class TableTests
{
    [Theory]
    [InlineData("dash 20"), InlineData("Dash-20"), InlineData("DASH20")]
    public void A_thread_is_found_however_it_is_spaced(string name) => Assert.Equal("dash 20", Threads.Find(name)?.Name);

    [Fact]
    public void Every_thread_is_found_by_its_own_name() => Assert.All(Threads.All, t => Assert.Same(t, Threads.Find(t.Name)));

    [Fact]
    public void Every_washer_covers_its_bolts_hole() => Assert.All(Bolts.All, b =>
    {
        Assert.InRange(b.Hole, 1.05 * b.Diameter, 1.15 * b.Diameter);
        Assert.InRange(b.Washer, 1.5 * b.Hole, 2.2 * b.Hole);
    });

    [Fact]
    public void A_bolt_outside_the_table_has_its_hole_by_rule() =>
        Assert.Equal((1.1 * 7.9, 2 * 7.9, Bolts.OtherSource), (Bolts.Hole(7.9).Value, Bolts.Washer(7.9).Value, Bolts.Hole(7.9).Source));

    [Fact]
    public void Every_tap_drill_is_smaller_than_its_thread() =>
        Assert.All(Threads.All, t => Assert.InRange(t.TapDrill, 0.8 * t.MajorDiameter, t.MajorDiameter));

    [Fact]
    public void A_gauge_of_another_kind_of_number_is_not_in_the_table()
    {
        Assert.Null(Gauges.Thickness(MaterialFamily.Stainless, 16.5));
        Assert.Null(Gauges.Thickness(MaterialFamily.Stainless, double.NaN));
        Assert.Null(Gauges.Thickness(MaterialFamily.Stainless, 9));
    }

    [Theory]
    [InlineData(MaterialFamily.Aluminium), InlineData(MaterialFamily.MildSteel), InlineData(MaterialFamily.Stainless)]
    public void A_higher_gauge_is_thinner(MaterialFamily family)
    {
        var thicknesses = Gauges.Numbers.Select(n => Gauges.Thickness(family, n)!.Value).ToList();

        Assert.Equal(thicknesses.OrderDescending(), thicknesses);
    }

    /// <summary>The walls of the tubes that dealers keep are those of its gauges: 0.049, 0.065, 0.083, 0.109, 0.120 in.</summary>
    [Fact]
    public void Thin_tubes_kept_by_dealers_have_a_gauge()
    {
        var walls = Gauges.Numbers.Select(n => Gauges.TubeWall(n)!.Value).ToList();

        Assert.Equal(walls.OrderDescending(), walls);
        Assert.All(TubeSizes.All.Where(tube => tube.Metal != "aluminium 6061" && tube.Wall < 3.1),
            tube => Assert.Contains(walls, wall => Math.Abs(wall - tube.Wall) < 1e-9));
        Assert.Null(Gauges.TubeWall(9));
    }

    /// <summary>ASTM A269: 32 mm within 0.13, 51 mm within 0.25, 110 mm within 0.38;
    /// extruded aluminium of 2 to 4 in within 0.015 in.</summary>
    [Theory]
    [InlineData(MaterialFamily.Stainless, 32, 0.13)]
    [InlineData(MaterialFamily.Stainless, 51, 0.25)]
    [InlineData(MaterialFamily.Stainless, 110, 0.38)]
    [InlineData(MaterialFamily.Aluminium, 76.2, 0.381)]
    public void A_tube_is_as_far_off_as_its_standard_lets_it(MaterialFamily family, double diameter, double off) =>
        Assert.Equal(off, TubeTolerances.Outside(family, diameter).Value, 1e-9);

    [Fact]
    public void Only_a_taper_thread_has_no_sealing_face() =>
        Assert.All(Threads.All, thread => Assert.Equal(thread.Name.EndsWith("NPT", StringComparison.Ordinal) || thread.Name.StartsWith('R'), thread.IsTaper));

    /// <summary>CK Worldwide Form 116: 12 in/min for butts of 1/8 in, 8 for fillets of 1/4 in.</summary>
    [Fact]
    public void Travel_at_a_row_is_the_row()
    {
        Assert.Equal(12 * 25.4, TigTables.Travel(MaterialFamily.Aluminium, SeamForm.Butt, 25.4 / 8).Value, 1e-9);
        Assert.Equal(8 * 25.4, TigTables.Travel(MaterialFamily.Aluminium, SeamForm.Fillet, 25.4 / 4).Value, 1e-9);
    }

    [Fact]
    public void Travel_between_rows_is_between_them()
    {
        // Halfway from 560 at 1.0 to 300 at 1.5.
        Assert.Equal(430, TigTables.Travel(MaterialFamily.Stainless, SeamForm.Butt, 1.25).Value, 1e-9);
    }

    [Theory]
    [InlineData(0.3, "thinner"), InlineData(20, "thicker")]
    public void Travel_beyond_the_table_is_its_end_and_says_so(double wall, string word) =>
        Assert.Contains(word, TigTables.Travel(MaterialFamily.MildSteel, SeamForm.Butt, wall).Source, StringComparison.Ordinal);

    [Fact]
    public void A_thicker_wall_asks_for_no_thinner_rod()
    {
        var rods = Enumerable.Range(1, 100).Select(i => Rods.RecommendedFor(i / 10.0).Diameter).ToList();

        Assert.Equal(rods.Order(), rods);
    }
}
