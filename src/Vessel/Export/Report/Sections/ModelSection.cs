using Vessel.Export.Report.Drawing;

namespace Vessel.Export.Report.Sections;

/// <summary>The vessel to look at: still pictures, and with a script the model to turn.</summary>
internal static class ModelSection
{
    public static ReportSection Section { get; } = new("model", "Model", Write);

    private static void Write(ReportContext report, Html html)
    {
        html.Tag(
            "div",
            () =>
            {
                if (SectionPicture.Has(report.Build.Section))
                {
                    html.Tag("figure", () =>
                    {
                        SectionPicture.Draw(report.Build.Section, html);
                        html.Tag("figcaption", "Cut through the axis; welds and threads are not drawn.");
                    });
                }
            },
            ("class", "stills"));
    }
}
