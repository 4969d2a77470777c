using System.Collections.Immutable;
using Vessel.Findings;

namespace Vessel.Export.Report.Sections;

/// <summary>Everything that was looked for, whether it was found, and how far the figures are from their limits.</summary>
internal static class ChecksSection
{
    public static ReportSection Section { get; } = new("checks", "Checks", Write);

    private static void Write(ReportContext report, Html html)
    {
        if (!report.Build.Margins.IsEmpty)
            WriteMargins(report.Build.Margins, report.Sizes, html);
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

    private static void WriteMargins(ImmutableArray<Measure> margins, Sizes sizes, Html html) => html.Table(
        "margin-table",
        "Margins of the checks that compare a figure with a limit, the least first",
        ["Figure", Column.Figure("Is"), "Limit", Column.Figure("Left, % of the limit"), "Check"],
        [
            .. margins.OrderBy(margin => margin.Figures[0].Free ?? margin.Figures[0].Value)
                .ThenBy(margin => margin.Of, StringComparer.Ordinal)
                .Select(margin => Row(margin, margin.Figures[0], margin.Figures[0].Limit!.Value, sizes)),
        ]);

    private static Cell[] Row(Measure margin, Measured figure, Allowed limit, Sizes sizes) =>
    [
        margin.Of, Told(figure.Value, figure, sizes), $"{(limit.IsMost ? "at most" : "at least")} {Told(limit.Aim, figure, sizes)}",
        figure.Free is { } free ? Sizes.Text(100 * free, 0) : null, $"{(margin.Holds ? "\u2714" : "\u25B2")} {margin.Code}",
    ];

    private static string Told(double value, Measured figure, Sizes sizes) =>
        figure.Unit == "mm" ? $"{sizes.Fine(value)} {sizes.Unit}" : $"{Sizes.Text(value, 1)} {figure.Unit}".TrimEnd();

    private static string Result(List<Measure> findings) => findings.Count == 0
        ? "\u2714 nothing"
        : string.Join(", ", findings
            .GroupBy(finding => (finding.Severity, Accepted: finding.AcceptedBecause is not null))
            .Select(group => $"{Sizes.Count(group.Count())} {(group.Key.Accepted ? "accepted " : string.Empty)}"
                + group.Key.Severity.ToString().ToLowerInvariant() + (group.Count() == 1 ? "" : "s")));
}
