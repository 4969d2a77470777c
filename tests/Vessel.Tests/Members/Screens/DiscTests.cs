using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Screens;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;
using Lines = Vessel.Export.Strokes;

namespace Vessel.Tests.Members.Screens;

public sealed class DiscTests
{
    [Fact]
    public void A_disc_stands_with_its_lower_face_at_its_height()
    {
        var part = Discs.PartOf(Discs.Screen("screen", 105));

        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);
        var heights = mesh.Vertices.Select(part.Placements[0].ToOuter).Select(v => v.Z).ToList();

        Assert.Equal(105, heights.Min());
        Assert.Equal(106.5, heights.Max());
    }

    [Theory]
    [InlineData(0, HolePattern.Staggered60)]
    [InlineData(34, HolePattern.Staggered60)]
    [InlineData(34, HolePattern.Rings)]
    public void A_disc_has_area_times_thickness_and_a_handle_for_each_hole(double bore, HolePattern pattern)
    {
        var part = Discs.PartOf(Discs.Screen("screen", 105, bore: bore, pattern: pattern));
        var holes = part.Fields.Single().Lattice.Count;

        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        var expected = 1.5 * Math.PI / 4 * ((105.6 * 105.6) - (bore * bore) - (holes * 3 * 3));
        Assert.Equal(expected, part.Volume, expected * 1e-12);
        Assert.Equal(part.Volume, mesh.Volume, Accuracy.Solids.Chord * CurveMeasures.Length(part.Flat!.Cut) * 1.5);
        MeshLaws.Hold(mesh, holes + (bore > 0 ? 1 : 0));
    }

    [Fact]
    public void Figures_of_the_flat_count_every_hole()
    {
        var part = Discs.PartOf(Discs.Screen("screen", 105, bore: 34));
        var holes = part.Fields.Single().Lattice.Count;

        var figures = FlatFigures.Of(FittedFlat.Of(part.Flat!, 0.01));

        Assert.Equal(holes + 1, figures.Holes);
        Assert.Equal(holes + 2, figures.Pierces);
        Assert.Equal(holes + 2, figures.Entities);
        Assert.Equal(Math.PI * (105.6 + 34 + (3 * holes)), figures.CutLengthMm, 1e-8);
    }

    [Fact]
    public void The_name_stands_in_the_margin()
    {
        var part = Discs.PartOf(Discs.Screen("screen", 105));
        var text = part.Flat!.Marks.OfType<TextMark>().Single();

        var points = Strokes(text);

        Assert.Equal("screen W5", text.Text);
        Assert.All(points, p => Assert.InRange(p.Length, (105.6 / 2) - 4, 105.6 / 2));
    }

    [Fact]
    public void A_welded_disc_is_joined_all_round_on_its_upper_face()
    {
        var weld = WeldOf(Discs.Screen("screen", 105, Fixing.Weld));

        Assert.Equal(Math.PI * 106, weld.Length, 1e-7);
        Assert.Equal(["shell", "screen"], weld.Joint.Between);
        Assert.All(weld.Stations, station => Assert.Equal(106.5, station.At.Root.Z));
    }

    [Fact]
    public void A_disc_on_tabs_has_three_tacks_of_ten_millimetres()
    {
        var tacked = WeldOf(Discs.Screen("screen", 105, Fixing.Tabs));
        var welded = WeldOf(Discs.Screen("screen", 105, Fixing.Weld));

        Assert.Equal(30, tacked.Length, 1e-7);
        Assert.Equal(3, tacked.Joint.Runs.Length);
        // The section is the same all round: metal goes with length. Both deposits are good to 1e-7.
        Assert.Equal(welded.Deposit * tacked.Length / welded.Length, tacked.Deposit, 3e-7 * welded.Deposit);
    }

    [Theory]
    [InlineData(Fixing.Screws)]
    [InlineData(Fixing.Press)]
    [InlineData(Fixing.Loose)]
    public void A_disc_held_otherwise_has_no_weld(Fixing held)
    {
        var assembly = Compiler.Assemble(Discs.Vessel([Discs.Screen("screen", 105, held)]));

        Assert.DoesNotContain(assembly.Welds, weld => weld.Joint.Between.Contains("screen"));
    }

    [Fact]
    public void Screws_are_bought()
    {
        var design = Discs.Vessel([Discs.Screen("screen", 105, Fixing.Screws)]);

        var item = Compiler.Assemble(design).Bought.Single();

        Assert.Equal(3, item.Quantity);
        Assert.Contains("M4", item.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Packing_weighs_its_room_between_two_discs()
    {
        var design = Discs.Vessel([Discs.Screen("low", 105), Discs.Screen("high", 128)], [Discs.Wool("low", "high")]);

        var item = Compiler.Assemble(design).Bought.Single();

        // 106.5 to 128 across the bore of 106; a cubic metre is 1e9 mm3, a kilogram 1000 g.
        var room = 21.5 * Math.PI / 4 * 106 * 106;
        Assert.Equal(room, item.Volume!.Value, 1e-6);
        Assert.Equal(room * 60e-6, item.Mass!.Value, 1e-9);
    }

    [Fact]
    public void A_tube_that_passes_through_leaves_less_room_for_packing()
    {
        // The lid's inner face is at 177; the outlet ends at 117, half-way through nothing round: 128 - 117 = 11 mm of it.
        var design = Discs.Vessel(
            [Discs.Screen("low", 105), Discs.Screen("high", 128, bore: 32.4)], [Discs.Wool("low", "high")], outletInside: 60);

        var item = Compiler.Assemble(design).Bought.Single();

        Assert.Equal(Math.PI / 4 * ((21.5 * 106 * 106) - (11 * 32 * 32)), item.Volume!.Value, 1e-6);
    }

    [Fact]
    public void Packing_without_a_disc_has_no_known_room()
    {
        var design = Discs.Vessel([Discs.Screen("low", 105)], [Discs.Wool("low", null)]);

        Assert.Null(Compiler.Assemble(design).Bought.Single().Mass);
    }

    private static WeldFigures WeldOf(ScreenDesign disc) =>
        Compiler.Assemble(Discs.Vessel([disc])).Welds.Single(weld => weld.Joint.Between.Contains(disc.Name));

    private static IEnumerable<Point2> Strokes(TextMark text) =>
        Lines.Of(text.Text, text.Center, text.Height, text.Angle).SelectMany(stroke => stroke);
}
