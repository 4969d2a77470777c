using Vessel.Function;

namespace Vessel.Export.Report.Sections;

internal static class AssumptionsSection
{
    public static ReportSection Section { get; } = new("assumptions", "Assumptions", (report, html) =>
        html.Tag("ul", () =>
        {
            foreach (var assumption in Assumptions.Of(report.Build.Assembly))
                html.Tag("li", assumption);
        }));
}
