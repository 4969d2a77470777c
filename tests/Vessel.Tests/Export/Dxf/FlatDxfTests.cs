using System.Text;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Dxf;

public sealed class FlatDxfTests
{
    // Coordinates are written to 1e-6 mm: each is off by up to 5e-7.
    private const double Digit = 5.1e-7;

    private static readonly DrawingOptions _new = new();
    private static readonly DrawingOptions _old = new(DxfRelease.R12);

    [Theory]
    [InlineData(DxfRelease.R2000)]
    [InlineData(DxfRelease.R12)]
    public void The_file_keeps_every_rule_of_its_edition(DxfRelease release)
    {
        var probe = DxfProbe.Check(Written(new(release)));

        Assert.Equal(3, probe.Polylines.Count(polyline => polyline.Layer == "CUT"));
        Assert.Single(probe.On("CUT", "CIRCLE"));
        Assert.Single(probe.On("BEND", "LINE"));
        Assert.Single(probe.On("MARK", "LINE"));
        Assert.Equal(2, probe.On("NOTE", "TEXT").Count());
    }

    [Theory]
    [InlineData(DxfRelease.R2000)]
    [InlineData(DxfRelease.R12)]
    public void The_same_flat_gives_the_same_bytes(DxfRelease release) =>
        Assert.Equal(Written(new(release)), Written(new(release)));

    [Fact]
    public void A_drawing_for_services_that_merge_layers_holds_nothing_but_what_is_cut()
    {
        var probe = DxfProbe.Check(Written(new(CutOnly: true)));

        Assert.Equal(["CUT"], probe.Entities.Select(entity => entity[8]).Distinct());
        Assert.Equal(4, probe.Entities.Count);
    }

    [Fact]
    public void Holes_are_cut_before_the_outline()
    {
        var cut = DxfProbe.Check(Written(_new)).Entities.Where(entity => entity[8] == "CUT").ToList();

        Assert.Equal("CIRCLE", cut[0].Type);
        Assert.Equal("4", cut[^1][90]);
        Assert.Equal(new Point2(0, 0), cut[^1].Point(10));
    }

    [Theory]
    [InlineData(DxfRelease.R2000)]
    [InlineData(DxfRelease.R12)]
    public void What_is_drawn_encloses_the_area_of_the_flat(DxfRelease release)
    {
        var probe = DxfProbe.Check(Written(new(release)));
        var circle = probe.On("CUT", "CIRCLE").Single().Real(40);

        var area = probe.Polylines.Where(polyline => polyline.Layer == "CUT").Sum(polyline => BulgeChain.Area(polyline.Vertices))
            - (Math.PI * circle * circle);

        var perimeter = FlatFigures.Of(FittedFlat.Of(Flats.Cover, 0.01)).CutLengthMm;
        Assert.Equal(FlatFigures.Of(FittedFlat.Of(Flats.Cover, 0.01)).AreaMm2, area, perimeter * (_new.Tolerance + Digit));
    }

    [Fact]
    public void The_saddle_stays_within_the_tolerance_after_rounding()
    {
        var saddle = DxfProbe.Check(Written(_new)).Polylines.Single(polyline => polyline.Layer == "CUT" && polyline.Vertices.Count > 5);
        var exact = BulgeChain.Points(Flats.Cover.Cut.Holes[1], 5000);

        var distance = BulgeChain.Distance(exact, BulgeChain.Points(saddle.Vertices, 1000));

        // Digits of a corner both ways, and the sides of the polygon as in the tests of the fit.
        Assert.InRange(distance, 0, _new.Tolerance + (2 * Digit) + 1e-5);
    }

    [Fact]
    public void Extents_hold_all_that_is_drawn_and_touch_the_outline()
    {
        var probe = DxfProbe.Check(Written(_new));

        // The notes hang below; everything else ends at the plate's edges.
        Assert.Equal(0, probe.HeaderPoint("$EXTMIN").U);
        Assert.Equal(90, probe.HeaderPoint("$EXTMAX").V);
        Assert.True(probe.HeaderPoint("$EXTMIN").V <= probe.On("NOTE", "TEXT").Min(text => text.Point(10).V));
    }

    [Fact]
    public void Extents_of_what_is_cut_alone_are_those_of_the_plate()
    {
        var probe = DxfProbe.Check(Written(new(CutOnly: true)));

        Assert.Equal(new Point2(0, 0), probe.HeaderPoint("$EXTMIN"));
        Assert.Equal(new Point2(210, 90), probe.HeaderPoint("$EXTMAX"));
    }

    [Fact]
    public void Notes_stand_clear_below_the_part()
    {
        var notes = DxfProbe.Check(Written(_new)).On("NOTE", "TEXT").ToList();

        Assert.All(notes, note => Assert.True(note.Point(10).V + note.Real(40) < 0));
        Assert.True(notes[0].Point(10).V - notes[1].Point(10).V > notes[0].Real(40));
        Assert.All(notes, note => Assert.InRange(note.Real(40), 2.5, 5));
    }

    [Fact]
    public void Letters_beyond_ascii_and_codes_of_the_format_are_written_so_that_they_read_as_meant()
    {
        var note = DxfProbe.Check(Written(_new)).On("NOTE", "TEXT").Last();

        Assert.Equal(@"Outside face up. 100% %d %%d ^  %%c \U+00FC", note[1]);
    }

    [Fact]
    public void Both_editions_draw_the_same_outlines()
    {
        var there = DxfProbe.Check(Written(_new)).Polylines;
        var here = DxfProbe.Check(Written(_old)).Polylines;

        Assert.Equal(there.SelectMany(polyline => polyline.Vertices), here.SelectMany(polyline => polyline.Vertices));
    }

    [Fact]
    public void Figures_are_those_of_the_exact_outline()
    {
        var figures = FlatFigures.Of(FittedFlat.Of(Flats.Cover, 0.01));

        Assert.Equal(210, figures.WidthMm);
        Assert.Equal(90, figures.HeightMm);
        Assert.Equal(4, figures.Pierces);
        Assert.Equal(3, figures.Holes);
        Assert.InRange(figures.DeviationMm, 1e-6, 0.01);
        var slot = 8 + 12 + 12 + 16 + (2 * Math.PI);
        var expected = 600 + (12 * Math.PI) + slot + CurveMeasures.Length(Flats.Cover.Cut.Holes[1]);
        Assert.Equal(expected, figures.CutLengthMm, 1e-9);
    }

    [Fact]
    public void A_drawing_is_written_without_closing_its_stream()
    {
        using var stream = new MemoryStream();
        FlatDxf.Write(FittedFlat.Of(Flats.Cover, _new.Tolerance), _new, stream);

        Assert.True(stream.CanWrite);
        Assert.StartsWith("0\r\nSECTION", Encoding.ASCII.GetString(stream.ToArray()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    public void With_a_kerf_the_outline_grows_and_holes_shrink_by_half_of_it(double kerf)
    {
        var probe = DxfProbe.Check(Written(_new with { Kerf = kerf }));
        var plain = DxfProbe.Check(Written(_new));

        // A rectangle of 210 x 90 with corners that the cutter rolls round: the law of Steiner.
        var half = kerf / 2;
        Near.Absolute(
            (210 * 90) + (half * 600) + (Math.PI * half * half),
            probe.Polylines.Where(p => p.Layer == "CUT").Max(p => BulgeChain.Area(p.Vertices)), 600 * Digit);
        Near.Absolute(plain.On("CUT", "CIRCLE").Single().Real(40) - half, probe.On("CUT", "CIRCLE").Single().Real(40), Digit);
        // The other holes: each loses about its length times half the kerf.
        Assert.All(
            plain.Polylines.Where(p => p.Layer == "CUT").Zip(probe.Polylines.Where(p => p.Layer == "CUT"))
                .Where(pair => BulgeChain.Area(pair.First.Vertices) < 0),
            pair => Assert.True(BulgeChain.Area(pair.Second.Vertices) > BulgeChain.Area(pair.First.Vertices)));
    }

    [Fact]
    public void A_kerf_wider_than_a_hole_is_refused_in_words() =>
        Assert.Contains("kerf", Assert.Throws<Vessel.Export.OutputException>(() => Written(_new with { Kerf = 13 })).Message,
            StringComparison.Ordinal);

    private static byte[] Written(DrawingOptions options)
    {
        using var stream = new MemoryStream();
        FlatDxf.Write(FittedFlat.Of(Flats.Cover, options.Tolerance), options, stream);
        return stream.ToArray();
    }
}
