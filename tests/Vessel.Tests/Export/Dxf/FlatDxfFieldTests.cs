using System.Globalization;
using System.Text;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Dxf;

public sealed class FlatDxfFieldTests
{
    private static readonly Part _screen = Discs.PartOf(Discs.Screen("screen", 105, bore: 34));

    private static readonly int _count = _screen.Fields[0].Lattice.Count;

    [Theory]
    [InlineData(DxfRelease.R2000)]
    [InlineData(DxfRelease.R12)]
    public void A_field_is_drawn_as_a_circle_for_each_hole(DxfRelease release)
    {
        var probe = DxfProbe.Check(Written(to => FlatDxf.Write(FittedFlat.Of(_screen.Flat!, 0.01), new(release), to)));

        var circles = probe.On("CUT", "CIRCLE").ToList();
        // And the bore and the edge.
        Assert.Equal(_count + 2, circles.Count);
        Assert.Equal(_count, circles.Count(circle => circle.Real(40) == 1.5));
    }

    [Fact]
    public void The_edge_is_cut_last()
    {
        var probe = DxfProbe.Check(Written(to => FlatDxf.Write(FittedFlat.Of(_screen.Flat!, 0.01), new(), to)));

        Assert.Equal(52.8, probe.On("CUT", "CIRCLE").Last().Real(40));
    }

    [Fact]
    public void The_table_has_a_row_for_each_hole_after_the_single_ones()
    {
        var rows = Encoding.UTF8.GetString(Written(to => HolesCsv.Write(_screen, to))).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(1 + 1 + _count, rows.Length);
        Assert.EndsWith("bore of screen", rows[1], StringComparison.Ordinal);
        Assert.StartsWith($"{_count + 1},", rows[^1], StringComparison.Ordinal);
        Assert.EndsWith("3,,,through,,,drill,pattern of screen", rows[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_layout_crosses_every_hole_of_a_small_field()
    {
        var probe = DxfProbe.Check(Written(to => HolesDxf.Write(_screen, FittedFlat.Of(_screen.Flat!, 0.01), new(), to)));

        Assert.Equal(_count + 1, probe.On("MARK", "CIRCLE").Count());
        Assert.Equal(2 * (_count + 1), probe.On("MARK", "LINE").Count());
    }

    [Fact]
    public void The_layout_leaves_out_a_large_field_and_says_so()
    {
        var disc = Discs.Screen("screen", 105);
        var part = Discs.PartOf(disc with { Holes = disc.Holes with { HoleDiameter = 1, Pitch = 1.8 } });

        var probe = DxfProbe.Check(Written(to => HolesDxf.Write(part, FittedFlat.Of(part.Flat!, 0.01), new(), to)));

        Assert.True(part.Fields[0].Lattice.Count > 2000);
        Assert.Empty(probe.On("MARK", "CIRCLE"));
        Assert.Contains(probe.On("NOTE", "TEXT"), text => text[1]!.Contains("too many to draw", StringComparison.Ordinal));
    }

    [Fact]
    public void The_cut_list_names_what_is_bought()
    {
        var design = Discs.Vessel(
            [Discs.Screen("low", 60, Fixing.Screws), Discs.Screen("high", 90)], [Discs.Wool("low", "high")]);

        var list = Encoding.UTF8.GetString(Written(to => CutListCsv.Write(Vessel.Planning.Plan.Of(Compiler.Assemble(design)), to)));

        Assert.Contains("screws of low,3,bought", list, StringComparison.Ordinal);
        Assert.Contains("\"stainless wool, stuffed to 60 kg/m3, fibre 0.05 mm\"", list, StringComparison.Ordinal);
    }

    /// <summary>A blank is bought in whole millimetres; its flat keeps the exact size.</summary>
    [Fact]
    public void The_cut_list_rounds_blanks_of_sheet_up()
    {
        var plan = Plans.Of("harbour-launch-breather.yaml");

        var rows = Encoding.UTF8.GetString(Written(to => CutListCsv.Write(plan, to))).Split('\n')
            .Select(row => row.TrimEnd('\r').Split(',')).ToList();

        var sheets = plan.Assembly.Parts.Where(part => part.Stock.Form == "sheet").ToList();
        Assert.Contains(sheets, part => part.Stock.Length % 1 > 0.01);
        Assert.All(sheets, part =>
        {
            var row = rows.First(cells => cells[0] == part.Name);
            Assert.Equal(Math.Ceiling(part.Stock.Length - 1e-6), double.Parse(row[4], CultureInfo.InvariantCulture));
            Assert.Equal(Math.Ceiling(part.Stock.Width - 1e-6), double.Parse(row[5], CultureInfo.InvariantCulture));
        });
    }

    private static byte[] Written(Action<Stream> write)
    {
        using var to = new MemoryStream();
        write(to);
        return to.ToArray();
    }
}
