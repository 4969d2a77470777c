using Vessel.Findings;

namespace Vessel.Export.Report.Sections;

/// <summary>Everything that was looked for, whether it was found, and how far the figures are from their limits.</summary>
internal static class ChecksSection
{
    public static ReportSection Section { get; } = new("checks", "What was checked", Write);

    private static void Write(ReportContext report, Html html)
    {
        var found = report.Build.Findings.ToLookup(finding => finding.Code);
        html.Table(
            "check-table",
            "Every check, those that found something first",
            ["Check", "Looks for", "Result", "Margin"],
            [
                .. FindingCodes.All
                    .OrderByDescending(code => found[code.Code].Any())
                    .Select(code => new Cell[]
                    {
                        code.Code, code.Cause, Result([.. found[code.Code]]), Margins([.. found[code.Code]]),
                    }),
            ]);
    }

    private static string Result(List<Finding> findings) => findings.Count == 0
        ? "\u2714 not found"
        : string.Join(", ", findings
            .GroupBy(finding => (finding.Severity, Accepted: finding.AcceptedBecause is not null))
            .Select(group => $"{Sizes.Count(group.Count())} {(group.Key.Accepted ? "accepted " : string.Empty)}"
                + group.Key.Severity.ToString().ToLowerInvariant()));

    /// <summary>The figure as a share of its limit, for each that has one.</summary>
    private static string? Margins(List<Finding> findings)
    {
        var shares = findings
            .SelectMany(finding => finding.Figures)
            .Where(figure => figure.Limit is { } limit && limit != 0)
            .Select(figure => $"{figure.Name} {Sizes.Text(100 * figure.Value / figure.Limit!.Value, 0)} % of its limit")
            .ToList();
        return shares.Count == 0 ? null : string.Join("; ", shares);
    }
}
