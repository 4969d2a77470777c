using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Vessel.Export.General;
using Vessel.Export;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Export.Pdf;
using Vessel.Export.Summary;
using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

/// <summary>What several files say of one vessel is one figure in all of them.</summary>
public sealed partial class OneFigureTests
{
    /// <summary>Coarse: words do not depend on facets.</summary>
    private static readonly BuildOptions _options = new(new(Tolerance: 0.2), false, new(1, Math.PI / 6), "test", "00");

    /// <summary>Steps, cautions, as-built sheet, drawing, table and summary: one pressure, one medium,
    /// and no other pressure beside it.</summary>
    [Theory]
    [InlineData("200 mbar", "water", "200 mbar (2.9 psi)")]
    [InlineData("300 mbar", "air", "300 mbar (4.4 psi)")]
    public void The_leak_test_is_one_everywhere(string pressure, string medium, string said)
    {
        var build = Built($"leak_test.pressure={pressure}", $"leak_test.with={medium}");
        var step = Assert.Single(build.Plan.Steps, step => step.Kind == Vessel.Planning.StepKind.Test).What;
        var caution = Assert.Single(Cautions.Of(build.Assembly), word => word.StartsWith("Leak test", StringComparison.Ordinal));
        var table = Encoding.UTF8.GetString(Written(to => LeakTestCsv.Write(build.Plan.LeakKit, to)));
        var asBuilt = string.Join('\n', new PdfProbe(Written(to => PdfDocument.Write("test", "vessel", AsBuiltPdf.Pages(build), to)))
            .Pages.SelectMany(page => page.Texts).Select(text => text.Words));
        var drawing = string.Join('\n', DrawingSheet.Of(build).Items.OfType<Text>().Select(text => text.Words));

        Assert.All(new[] { step, caution, table, asBuilt, drawing }, words =>
        {
            Assert.Contains(said, words, StringComparison.Ordinal);
            Assert.All(Pressures().Matches(words), match => Assert.Equal(pressure, match.Value));
            Assert.DoesNotContain("kPa", words, StringComparison.Ordinal);
        });
        Assert.All(new[] { table, asBuilt, drawing }, words => Assert.Contains($"{medium} at {said}", words, StringComparison.Ordinal));
        Assert.Contains(medium, step, StringComparison.Ordinal);
        Assert.Equal(medium == "air", step.Contains("soap", StringComparison.Ordinal));
        var test = Summary(build).GetProperty("plan").GetProperty("leak_test");
        Assert.Equal(medium, test.GetProperty("with").GetString());
        Assert.Equal($"{test.GetProperty("pressure_mbar").GetDouble():0} mbar", pressure);
    }

    /// <summary>The demo's wool weighs 6 g, which turns 2.83 kg into 2.84.</summary>
    [Fact]
    public void The_empty_mass_is_one_everywhere()
    {
        var build = Built();
        var empty = Weight.Empty(build.Assembly).Mass / 1000;
        var said = empty.ToString("0.00", CultureInfo.InvariantCulture) + " kg";

        Assert.NotEqual(said,
            (build.Assembly.Parts.Sum(part => part.Mass * part.Quantity) / 1000).ToString("0.00", CultureInfo.InvariantCulture) + " kg");
        Assert.Contains(said + " empty", PageProbe.Of(build).Shown, StringComparison.Ordinal);
        Assert.Contains(new PdfProbe(Written(to => PdfDocument.Write("test", "vessel", AsBuiltPdf.Pages(build), to)))
            .Pages.SelectMany(page => page.Texts), text => text.Words == said);
        Near.Relative(empty * 1000, Summary(build).GetProperty("totals").GetProperty("mass_g").GetDouble(), 1e-9);
        Near.Relative(empty, FunctionFigures.Of(build.Assembly).SelectMany(group => group.Figures)
            .Single(figure => figure.Name == "mass-empty").Value.Likely, 1e-12);
    }

    private static Build Built(params string[] with) => Compiler.Compile(
        Compiler.Read(Repository.Design("harbour-launch-breather.yaml"), new(null, [.. with])).Value!, _options);

    private static JsonElement Summary(Build build)
    {
        using var document = JsonDocument.Parse(Written(to => SummaryShape.Write(build, to)));
        return document.RootElement.Clone();
    }

    private static byte[] Written(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }

    [GeneratedRegex(@"\d+(\.\d+)? mbar")]
    private static partial Regex Pressures();
}
