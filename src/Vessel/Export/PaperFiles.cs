using Vessel.Export.Drawing;
using Vessel.Export.General;
using Vessel.Export.Paper;
using Vessel.Export.Pdf;
using Vessel.Export.Svg;
using Vessel.Function;

namespace Vessel.Export;

/// <summary>What is printed, besides the templates of single parts.</summary>
internal static class PaperFiles
{
    public static IEnumerable<OutputFile> Of(Build build)
    {
        // One page in two formats, drawn when the first of them is written.
        var drawing = new Lazy<Page>(() => DrawingSheet.Of(build));
        yield return Pdf("gauge-strip.pdf", "strip for dipstick or sight tube", build, () => GaugeStripPdf.Pages(build));
        if (DrillSheetsPdf.Has(build.Assembly))
            yield return Pdf("drill-sheets.pdf", "drill sheets", build, () => DrillSheetsPdf.Pages(build));
        yield return Pdf("as-built.pdf", "as built", build, () => AsBuiltPdf.Pages(build));
        yield return Pdf("drawing.pdf", "drawing", build, () => [drawing.Value]);
        yield return new("drawing.svg", to => SvgFile.Write(Title("drawing", build), drawing.Value, to));
    }

    /// <summary>A file of pages, drawn when it is written.</summary>
    /// <param name="what">Title of the paper behind the vessel's name.</param>
    public static OutputFile Pdf(string path, string what, Build build, Func<IEnumerable<Page>> pages) =>
        new(path, to => PdfDocument.Write(Title(what, build), $"vessel {build.Options.ToolVersion}", [.. pages()], to));

    private static string Title(string what, Build build) => $"{build.Assembly.Design.Name}: {what}";
}
