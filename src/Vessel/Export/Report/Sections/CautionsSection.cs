using Vessel.Function;

namespace Vessel.Export.Report.Sections;

internal static class CautionsSection
{
    public static ReportSection Section { get; } = new("cautions", "Cautions", (report, html) =>
        html.Tag("ul", () =>
        {
            foreach (var caution in Cautions.Of(report.Build.Assembly))
                html.Tag("li", caution);
        }));
}
