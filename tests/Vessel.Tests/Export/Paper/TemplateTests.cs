using Vessel.Design;
using Vessel.Export;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Export.Pdf;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Paper;

public sealed class TemplateTests
{
    // What is left of straight lines and of the ends of arcs is the rounding of a few sums.
    private const double Rounding = 1e-9;

    private const double Fit = 0.01;

    // Arcs are fitted to the exact curve, and their chords stand off them again.
    private const double Off = Fit + Placing.Chord;

    private static readonly PaperOptions _paper = new(PaperSize.A4, 0.3);

    public static TheoryData<double, double> Branches => new() { { 0, 0 }, { 14, 0 }, { -9, 0.4 }, { 6, -0.3 } };

    [Theory]
    [MemberData(nameof(Branches))]
    public void A_cope_laid_round_the_tube_lies_on_the_shell(double offset, double tilt)
    {
        var (site, cope) = Cope(offset, tilt);

        // Arcs of the fit, each in several chords.
        Assert.True(cope.Length > 20);
        Assert.All(cope, p => Assert.Equal(0, site.Outside.Distance(p), Off));
    }

    [Fact]
    public void A_cope_laid_the_wrong_way_round_stands_off()
    {
        var (site, cope) = Cope(14, 0);

        Assert.True(cope.Max(p => Math.Abs(site.Outside.Distance(new(p.X, -p.Y, p.Z)))) > 1);
    }

    [Theory]
    [MemberData(nameof(Branches))]
    public void A_hole_laid_round_the_rolled_shell_is_the_bore(double offset, double tilt)
    {
        var (vessel, site) = Designs.Tee(50, 16, 2, offset, tilt);
        var part = ShellPart.Build(vessel.Shell.Courses[0], vessel, [site], Compiler.Assemble(vessel).Joints).Single();
        var hole = Edges(WrapTemplate.Of(part, Fitted(part), null, _paper))
            .MinBy(edge => edge.Vertices.Length > 4 ? Placing.Bounds(edge).Width : 1e9)!;
        var start = vessel.Shell.SeamAngle;
        var radius = vessel.Shell.OuterRadius;

        Assert.All(hole.Flattened(1), p =>
        {
            var angle = start + (p.U / (radius + (_paper.Thickness / 2)));
            var at = site.Frame.ToLocal(new Vector3(radius * Math.Cos(angle), radius * Math.Sin(angle), p.V));
            Assert.Equal(site.Port.BoreRadius, new Point2(at.X, at.Y).Length, Off);
        });
    }

    [Fact]
    public void A_wrap_is_as_long_as_the_middle_of_the_paper()
    {
        var (vessel, site) = Designs.Tee(50, 16, 2, 8, 0.1);
        var part = PortPart.Build(site, Compiler.Assemble(vessel).Joints)[0];
        var template = WrapTemplate.Of(part, Fitted(part), site, _paper);

        Assert.Equal(Turns.Full * 16.15, Placing.Bounds(Edges(template).First()).Width, Rounding);
    }

    [Fact]
    public void A_gauge_leaves_the_angle_that_the_bend_leaves()
    {
        var flat = Flats.Cover with { Bends = [new(new(190, 0), new(190, 90), Turns.Full / 6, 4, 0.42)] };
        var outline = Edges(PlateTemplate.Of(Flats.PartWith(flat), FittedFlat.Of(flat, Fit)).Last()).Single().Flattened(1);
        var (right, left) = (outline[^2] - outline[^3], outline[^1] - outline[0]);

        // Two legs of 50 mm beyond the round, a third of a turn apart.
        Assert.Equal(Math.PI - (Turns.Full / 6), Math.Acos(right.Unit().Dot(left.Unit())), Rounding);
        Assert.Equal(50, right.Length, Rounding);
        Assert.Equal(50, left.Length, Rounding);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Every_page_has_both_scales_at_their_true_length(string paper)
    {
        var size = paper == "A4" ? PaperSize.A4 : PaperSize.Letter;
        var pages = Written(Sheet(500, 300), size);

        Assert.True(pages.Length > 4);
        Assert.All(pages, page =>
        {
            Assert.Equal(size.Width * size.Height, page.Width * page.Height, 0.1);
            // Coordinates are written to 1e-4 mm.
            Assert.Contains(page.Strokes, stroke => Math.Abs(stroke.Length - 100) < 2e-4);
            Assert.Contains(page.Strokes, stroke => Math.Abs(stroke.Length - 101.6) < 2e-4);
            Assert.Contains(page.Texts, text => text.Words.Contains("MEASURE", StringComparison.Ordinal));
        });
    }

    [Fact]
    public void A_template_that_fits_takes_one_page() => Assert.Single(Written(Sheet(180, 200), PaperSize.A4));

    [Fact]
    public void Wider_than_high_it_fits_a_page_that_lies() =>
        Assert.True(Written(Sheet(260, 120), PaperSize.A4).Single() is { Width: > 290 });

    [Fact]
    public void One_too_large_for_paper_is_told_and_not_drawn()
    {
        var page = Written(Sheet(1e7, 1e7), PaperSize.A4).Single();

        Assert.Contains(page.Texts, text => text.Words.StartsWith("TOO LARGE FOR PAPER", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Strokes, stroke => stroke.Length > 110);
    }

    private static Template Sheet(double width, double height) =>
        new("a sheet", [Stroke.Rectangle(new(default, new(width, height)), Pens.Edge)], ["A note."]);

    private static System.Collections.Immutable.ImmutableArray<PdfProbePage> Written(Template template, PaperSize size)
    {
        using var file = new MemoryStream();
        PdfDocument.Write("test", "vessel", [.. TemplatePages.Of(template, size, "a vessel")], file);
        return new PdfProbe(file.ToArray()).Pages;
    }

    private static FittedFlat Fitted(Part part) => FittedFlat.Of(part.OnOutside!, Fit);

    /// <summary>The holes, then the outline.</summary>
    private static IEnumerable<Stroke> Edges(Template template) =>
        template.Drawn.SelectMany(item => item is Area metal ? metal.Outlines : [item]).OfType<Stroke>()
            .Where(stroke => stroke is { Closed: true, Pen.Width: > 0.3 });

    /// <summary>The points of the lower edge, laid round the tube, in the port's frame.</summary>
    private static (PortSite Site, Vector3[] Cope) Cope(double offset, double tilt)
    {
        var (vessel, site) = Designs.Tee(50, 16, 2, offset, tilt);
        site = site with { Port = site.Port with { Cut = EndCut.Ground } };
        var part = PortPart.Build(site, Compiler.Assemble(vessel).Joints)[0];
        var lift = ((WrappedDevelopment)part.Flat!.From).Lift;
        var outline = Edges(WrapTemplate.Of(part, Fitted(part), site, _paper)).First().Flattened(1);
        return (site, [.. outline.Where(p => p.V < site.Port.Length + lift - 1e-6).Select(p =>
        {
            var phi = p.U / (16 + (_paper.Thickness / 2));
            return new Vector3(16 * Math.Cos(phi), 16 * Math.Sin(phi), p.V - lift);
        })]);
    }
}
