using System.Collections.Immutable;
using Vessel.Findings;

namespace Vessel.Cli;

/// <summary>Findings as text, one a line, gravest first.</summary>
internal static class FindingText
{
    public static void Write(string file, ImmutableArray<Finding> findings, TextWriter output, ConsoleStyle style)
    {
        foreach (var finding in findings.OrderByDescending(finding => finding.Severity))
        {
            var place = finding.At is { } at ? $"{file}:{at.Line}:{at.Column}: " : string.Empty;
            output.WriteLine($"{place}{Severity(finding, style)} {finding.Code}: {finding.Message}");
        }
    }

    public static string Count(ImmutableArray<Finding> findings)
    {
        var counts = findings
            .GroupBy(finding => finding.Severity)
            .OrderByDescending(group => group.Key)
            .Select(group => $"{group.Count()} {Word(group.Key)}{(group.Count() == 1 ? string.Empty : "s")}");
        return string.Join(", ", counts);
    }

    public static int ExitCode(ImmutableArray<Finding> findings) =>
        findings.Any(finding => finding.Severity == Findings.Severity.Error) ? ExitCodes.GraveFindings : ExitCodes.Good;

    private static string Severity(Finding finding, ConsoleStyle style) => finding.Severity switch
    {
        Findings.Severity.Error => style.Bad(Word(finding.Severity)),
        Findings.Severity.Warning => style.Doubtful(Word(finding.Severity)),
        _ => Word(finding.Severity),
    };

    private static string Word(Severity severity) => severity.ToString().ToLowerInvariant();
}
