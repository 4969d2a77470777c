using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;

namespace Vessel.Export.Report.Sections;

/// <summary>The verdict, and whatever is ill-advised, gravest first.</summary>
internal static class FindingsSection
{
    public static ReportSection Section { get; } = new("findings", "Findings", Write);

    /// <summary>One sentence for the head of the page.</summary>
    public static (string Sign, string Words, string Kind) Verdict(ReportContext report)
    {
        var (errors, warnings, notes) = (report.Open(Severity.Error), report.Open(Severity.Warning), report.Open(Severity.Note));
        return errors > 0
            ? ("\u2716", $"Do not cut yet: {Counted(errors, "error")} to put right first.", "error")
            : warnings > 0
                ? ("\u25B2", $"Can be made, but look first: {Counted(warnings, "warning")}.", "warning")
                : notes > 0
                    ? ("\u2714", $"Can be made as it is; {Counted(notes, "note")} to keep in mind.", "note")
                    : ("\u2714", "Can be made as it is; nothing was found.", "good");
    }

    private static void Write(ReportContext report, Html html)
    {
        if (report.Findings.IsEmpty)
        {
            html.Tag("p", "Nothing was found that is ill-advised.");
            return;
        }

        html.Tag(
            "ul",
            () =>
            {
                foreach (var finding in report.Findings)
                    WriteFinding(finding, report, html);
            },
            ("class", "findings"));
    }

    private static void WriteFinding(Measure finding, ReportContext report, Html html)
    {
        var accepted = finding.AcceptedBecause is not null;
        var (sign, kind) = finding.Severity switch
        {
            _ when accepted => ("\u2713", "accepted"),
            Severity.Error => ("\u2716", "error"),
            Severity.Warning => ("\u25B2", "warning"),
            _ => ("\u25CF", "note"),
        };
        html.Tag(
            "li",
            () =>
            {
                html.Tag("p", () =>
                {
                    html.Tag("span", sign, ("class", "sign"), ("aria-hidden", "true"));
                    html.Tag(
                        "strong", accepted ? $"Accepted {finding.Severity.ToString().ToLowerInvariant()}" : finding.Severity.ToString());
                    html.Text(" ");
                    html.Tag("code", finding.Code);
                    html.Text(": ");
                    html.Text(finding.Message);
                });
                if (finding.AcceptedBecause is { } reason)
                    html.Tag("p", $"Accepted because: {reason}");
                WriteFigures(finding, html);
                html.Tag("p", () => WriteSources(finding, report, html), ("class", "small"));
            },
            ("class", kind));
    }

    private static void WriteFigures(Measure finding, Html html)
    {
        if (finding.Figures.IsEmpty)
            return;
        html.Tag(
            "ul",
            () =>
            {
                foreach (var figure in finding.Figures)
                {
                    var limit = figure.Limit is { } of ? $", limit {FigureText.Of(of.For(figure.Value))} {figure.Unit}" : string.Empty;
                    html.Tag("li", $"{figure.Name} {FigureText.Of(figure.Value)} {figure.Unit}{limit}".TrimEnd());
                }
            },
            ("class", "small"));
    }

    private static void WriteSources(Measure finding, ReportContext report, Html html)
    {
        if (finding.At is { } at)
        {
            var line = $"line {Sizes.Count(at.Line)}. ";
            html.Text(at.Setting switch
            {
                > 0 => $"Setting {Sizes.Count(at.Setting)} from outside the file. ",
                Span.InShop => $"Shop file, {line}",
                _ => $"Design file, {line}",
            });
        }

        html.Text(finding.Parts.IsEmpty ? string.Empty : "Parts: ");
        for (var i = 0; i < finding.Parts.Length; i++)
        {
            html.Text(i > 0 ? ", " : string.Empty);
            if (report.NameOf(finding.Parts[i]) is { } name)
                html.Link($"#part-{finding.Parts[i]}", name);
            else
                html.Text(finding.Parts[i]);
        }
    }

    private static string Counted(int count, string word) => $"{Sizes.Count(count)} {word}{(count == 1 ? string.Empty : "s")}";
}
