using Vessel.Findings;

namespace Vessel.Export.Report.Sections;

/// <summary>Everything that was looked for, whether it was found, and how far the figures are from their limits.</summary>
internal static class ChecksSection
{
    public static ReportSection Section { get; } = new("checks", "Checks", Write);

    private static void Write(ReportContext report, Html html)
    {
        if (Margins.Of(report.Build.Assembly) is { IsEmpty: false } margins)
            WriteMargins([.. margins], report.Sizes, html);
        var found = report.Build.Findings.ToLookup(finding => finding.Code);
        html.Table(
            "check-table",
            "Every check, those that found something first",
            ["Check", "Looks for", "Result"],
            [
                .. FindingCodes.All
                    .OrderByDescending(code => found[code.Code].Any())
                    .Select(code => new Cell[]
                    {
                        code.Code, code.Cause, Result([.. found[code.Code]]),
                    }),
            ]);
    }

    private static void WriteMargins(List<Margin> margins, Sizes sizes, Html html) => html.Table(
        "margin-table",
        "Margins of the checks that compare a figure with a limit, the least first",
        ["Figure", Column.Figure("Is"), "Limit", Column.Figure("Left, % of the limit"), "Check"],
        [
            .. margins.OrderBy(margin => margin.Free ?? margin.Value).ThenBy(margin => margin.Of, StringComparer.Ordinal).Select(margin => new Cell[]
            {
                margin.Of, Told(margin.Value, margin, sizes), $"{(margin.IsMost ? "at most" : "at least")} {Told(margin.Limit, margin, sizes)}",
                margin.Free is { } free ? Sizes.Text(100 * free, 0) : null, $"{(margin.Holds ? "\u2714" : "\u25B2")} {margin.Code}",
            }),
        ]);

    private static string Told(double value, Margin margin, Sizes sizes) =>
        margin.Unit == "mm" ? $"{sizes.Fine(value)} {sizes.Unit}" : $"{Sizes.Text(value, 1)} {margin.Unit}".TrimEnd();

    private static string Result(List<Finding> findings) => findings.Count == 0
        ? "\u2714 nothing"
        : string.Join(", ", findings
            .GroupBy(finding => (finding.Severity, Accepted: finding.AcceptedBecause is not null))
            .Select(group => $"{Sizes.Count(group.Count())} {(group.Key.Accepted ? "accepted " : string.Empty)}"
                + group.Key.Severity.ToString().ToLowerInvariant() + (group.Count() == 1 ? "" : "s")));
}
