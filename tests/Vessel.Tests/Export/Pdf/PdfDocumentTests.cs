using System.Globalization;
using System.Text;
using Vessel.Export.Drawing;
using Vessel.Export.Pdf;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Pdf;

public sealed class PdfDocumentTests
{
    // Coordinates are written to 1e-4 mm: off by half of that in x and in y, at each end.
    private const double Rounding = 4 * 0.5e-4;

    private static readonly Pen _pen = Pens.Edge;

    [Fact]
    public void Every_entry_of_the_table_leads_to_its_object()
    {
        var probe = new PdfProbe(Written(Page()));

        Assert.All(probe.Starts.Select((start, i) => (start, Number: i + 1)), entry =>
            Assert.StartsWith($"{entry.Number} 0 obj\n", probe.At(entry.start, 12), StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_stands_outside_the_table()
    {
        var file = Written(Page(), Page());

        Assert.Equal(new PdfProbe(file).Starts.Length, Encoding.Latin1.GetString(file).Split("endobj").Length - 1);
    }

    [Fact]
    public void A_page_is_as_large_as_asked()
    {
        var page = new PdfProbe(Written(new Page(215.9, 279.4, []))).Pages.Single();

        // A box is written to 1e-4 point.
        Assert.Equal(215.9, page.Width, 0.5e-4);
        Assert.Equal(279.4, page.Height, 0.5e-4);
    }

    [Fact]
    public void A_line_is_as_long_on_paper_as_it_is_drawn()
    {
        var page = Read(Stroke.Line(new(20.05, 10), new(20.05 + 60, 10 + 80), _pen));

        Assert.Equal(100, page.Strokes.Single().Length, Rounding);
    }

    [Fact]
    public void A_line_keeps_its_pen()
    {
        var page = Read(Stroke.Line(default, new(1, 0), new("test", 0.7, 0.25, new(4, 1.5))), Stroke.Line(default, new(1, 0), _pen));

        Assert.Equal([(0.7, 0.25, "4 1.5"), (0.35, 0, "")], page.Strokes.Select(stroke => (stroke.Width, stroke.Gray, stroke.Dash)));
    }

    /// <summary>Cubic pieces of an eighth of a turn leave a circle by 4.25e-6 of its radius.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(700)]
    public void A_circle_and_an_arc_keep_their_radius(double radius)
    {
        var (center, quarter) = (new Point2(40, 50), Math.Tan(Math.PI / 8));
        var page = Read(
            new Circle(center, radius, _pen),
            new Stroke([new(center + new Point2(radius, 0), quarter), new(center + new Point2(0, radius), 0)], _pen));

        Assert.Equal([true, false], page.Strokes.Select(stroke => stroke.Closed));
        Assert.All(page.Strokes.SelectMany(stroke => stroke.Points),
            p => Assert.Equal(radius, (p - center).Length, (4.3e-6 * radius) + Rounding));
        // 129 points round it leave an arc by a sixth of the square of half a step.
        Assert.All(page.Strokes.Zip([Turns.Full * radius, Turns.Full / 4 * radius]),
            pair => Near.Relative(pair.Second, pair.First.Length, 1e-3));
    }

    [Fact]
    public void Text_stands_where_its_strokes_are()
    {
        var text = Text.Middle("Ablauf 2x", new(50, 60), 3.5, 0.4);
        var read = Read(text).Texts.Single();

        Assert.Equal("Ablauf 2x", read.Words);
        Assert.True((read.Start - text.Start).Length < Rounding);
        // Six units of a millionth each.
        Assert.Equal(3.5, read.Height, 6e-6);
        Assert.Equal(0.4, read.Angle, 1e-5);
    }

    [Fact]
    public void Letters_of_all_planes_can_be_found()
    {
        const string words = "Zb\u011Brn\u00E1 n\u00E1doba \u2300 40\u00B0 \U0001F6A2";

        Assert.Equal(words, Read(Text.Left(words, default, 3)).Texts.Single().Words);
    }

    [Fact]
    public void More_letters_than_codes_still_make_a_file()
    {
        var words = string.Concat(Enumerable.Range(0x4E00, 400).Select(i => (char)i));

        Assert.Equal(400, Read(Text.Left(words, default, 3)).Texts.Single().Words.Length);
    }

    [Fact]
    public void The_same_pages_give_the_same_bytes_in_any_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var here = Written(Page());
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;

            Assert.Equal(here, Written(Page()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Viewers_are_asked_not_to_scale() =>
        Assert.Contains("/PrintScaling /None", new PdfProbe(Written(Page())).Body(1), StringComparison.Ordinal);

    private static Page Page() => new(210, 297, [Stroke.Line(new(10, 10), new(60.5, 10), _pen), Text.Left("sleeve W3", new(10, 20), 4)]);

    private static PdfProbePage Read(params Item[] items) => new PdfProbe(Written(new Page(210, 297, [.. items]))).Pages.Single();

    private static byte[] Written(params Page[] pages)
    {
        using var file = new MemoryStream();
        PdfDocument.Write("A test", "vessel", pages, file);
        return file.ToArray();
    }
}
