using Vessel.Export.Drawing;
using Vessel.Export.General;
using Vessel.Export.Pdf;
using Vessel.Export.Svg;

namespace Vessel.Export.Paper;

/// <summary>What is printed, besides the templates of single parts.</summary>
internal static class PaperFiles
{
    public static IEnumerable<OutputFile> Of(Build build)
    {
        // One page in two formats, drawn when the first of them is written.
        var drawing = new Lazy<Page>(() => DrawingSheet.Of(build));
        var title = $"{build.Assembly.Design.Name}: drawing";
        yield return new("gauge-strip.pdf", to => GaugeStripPdf.Write(build, to));
        if (DrillSheetsPdf.Has(build.Assembly))
            yield return new("drill-sheets.pdf", to => DrillSheetsPdf.Write(build, to));
        yield return new("as-built.pdf", to => AsBuiltPdf.Write(build, to));
        yield return new("drawing.pdf", to => PdfDocument.Write(title, $"vessel {build.Options.ToolVersion}", [drawing.Value], to));
        yield return new("drawing.svg", to => SvgFile.Write(title, drawing.Value, to));
    }
}
