using Vessel.Export.Drawing;

namespace Vessel.Export.Paper;

/// <summary>What is printed, besides the templates of single parts.</summary>
internal static class PaperFiles
{
    public static IEnumerable<OutputFile> Of(Build build)
    {
        yield return new("gauge-strip.pdf", to => GaugeStripPdf.Write(build, to));
        if (DrillSheetsPdf.Has(build.Assembly))
            yield return new("drill-sheets.pdf", to => DrillSheetsPdf.Write(build, to));
        yield return new("as-built.pdf", to => AsBuiltPdf.Write(build, to));
        yield return new("drawing.pdf", to => DrawingFiles.WritePdf(build, to));
        yield return new("drawing.svg", to => DrawingFiles.WriteSvg(build, to));
    }
}
