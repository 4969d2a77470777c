using System.Collections.Immutable;
using Vessel.Cli.Commands;
using Vessel.Findings;

namespace Vessel.Cli;

/// <summary>Findings as text, one a line, gravest first, accepted ones last.</summary>
internal static class FindingText
{
    public static void Write(DesignFile file, ImmutableArray<Measure> findings, TextWriter output, ConsoleStyle style)
    {
        foreach (var finding in findings.OrderBy(IsAccepted).ThenByDescending(finding => finding.Severity))
        {
            var place = finding.At is { } at ? file.Place(at) + " " : string.Empty;
            output.WriteLine(finding.AcceptedBecause is { } reason
                ? $"{place}accepted {Word(finding.Severity)} {finding.Code}: {reason}"
                : $"{place}{Severity(finding, style)} {finding.Code}: {finding.Message}");
        }
    }

    public static string Count(ImmutableArray<Measure> findings)
    {
        var counts = findings
            .Where(finding => !IsAccepted(finding))
            .GroupBy(finding => finding.Severity)
            .OrderByDescending(group => group.Key)
            .Select(group => $"{group.Count()} {Word(group.Key)}{(group.Count() == 1 ? string.Empty : "s")}");
        var accepted = findings.Count(IsAccepted);
        return string.Join(", ", accepted == 0 ? counts : counts.Append($"{accepted} accepted"));
    }

    /// <summary>One line that says whether anything is left that stands against cutting.</summary>
    public static string Verdict(ImmutableArray<Measure> findings) =>
        findings.IsEmpty ? "no faults, no findings"
        : ExitCode(findings) == ExitCodes.Good ? $"no faults; {Count(findings)}"
        : $"do not cut yet: {Count(findings)}";

    public static int ExitCode(ImmutableArray<Measure> findings) =>
        findings.Any(finding => finding.Severity == Model.Severity.Error) ? ExitCodes.GraveFindings : ExitCodes.Good;

    private static bool IsAccepted(Measure finding) => finding.AcceptedBecause is not null;

    private static string Severity(Measure finding, ConsoleStyle style) => finding.Severity switch
    {
        Model.Severity.Error => style.Bad(Word(finding.Severity)),
        Model.Severity.Warning => style.Doubtful(Word(finding.Severity)),
        _ => Word(finding.Severity),
    };

    private static string Word(Severity severity) => severity.ToString().ToLowerInvariant();
}
