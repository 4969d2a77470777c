using System.Runtime.CompilerServices;
using Vessel.Export.Pdf;

namespace Vessel.Export.Drawing;

/// <summary>The drawing sheet in its two formats, drawn once.</summary>
internal static class DrawingFiles
{
    private static readonly ConditionalWeakTable<Build, Lazy<PdfPage>> _drawn = [];

    public static void WritePdf(Build build, Stream to) =>
        PdfDocument.Write($"{build.Assembly.Design.Name}: drawing", $"vessel {build.Options.ToolVersion}", [Page(build)], to);

    public static void WriteSvg(Build build, Stream to) => SvgWriter.Write($"{build.Assembly.Design.Name}: drawing", Page(build), to);

    private static PdfPage Page(Build build) => _drawn.GetValue(build, key => new(() => DrawingSheet.Of(key))).Value;
}
