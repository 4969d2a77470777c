using System.Text;
using Vessel.Export.Pictures;
using Vessel.Function;

namespace Vessel.Export.Report;

/// <summary>
/// report.html: everything about a build on one page that needs no network, no server, and neither script nor WebGL to be
/// read. Its own policy forbids it to fetch anything and to run any script but its own.
/// </summary>
internal static class ReportPage
{
    public const string FileName = "report.html";

    public static void Write(Build build, StillPictures pictures, Stream to)
    {
        using var text = new StreamWriter(to, new UTF8Encoding(false), 1 << 16, leaveOpen: true) { NewLine = "\n" };
        var html = new Html(text);
        var report = ReportContext.Of(build, pictures);
        var sections = ReportSection.All.Where(section => section.AppliesTo(report)).ToList();
        html.Raw("<!doctype html>\n");
        html.Tag(
            "html",
            () =>
            {
                html.Tag("head", () => WriteHead(build.Assembly.Design.Name, html));
                html.Tag("body", () =>
                {
                    html.Tag("a", "Skip to the findings", ("class", "skip"), ("href", $"#{sections[0].Id}"));
                    html.Tag("header", () => WriteVerdict(report, html));
                    html.Tag("nav", () => WriteContents(sections, html), ("aria-label", "Contents"));
                    html.Tag("main", () =>
                    {
                        foreach (var section in sections)
                            WriteSection(section, report, html);
                    });
                    html.Tag("footer", () => WriteOrigin(build, html));
                    html.Tag("script", () => html.Raw(ReportAssets.Script));
                });
            },
            ("lang", "en"));
    }

    private static void WriteHead(string name, Html html)
    {
        html.Mark("meta", ("charset", "utf-8"));
        html.Mark("meta", ("http-equiv", "Content-Security-Policy"), ("content", ReportAssets.Policy));
        html.Mark("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));
        html.Mark("meta", ("name", "color-scheme"), ("content", "light dark"));
        html.Tag("title", $"{name}: report");
        html.Tag("style", () => html.Raw(ReportAssets.Style));
    }

    private static void WriteVerdict(ReportContext report, Html html)
    {
        var design = report.Build.Assembly.Design;
        html.Tag("h1", design.Name);
        var (sign, words, kind) = Sections.FindingsSection.Verdict(report);
        html.Tag(
            "p",
            () =>
            {
                html.Tag("span", sign, ("class", "sign"), ("aria-hidden", "true"));
                html.Text(words);
            },
            ("class", $"verdict {kind}"));
        var mass = Weight.Empty(report.Build.Assembly).Mass;
        html.Tag("p", $"Revision {design.Revision}. {Sizes.Count(report.Build.Parts.Sum(built => built.Part.Quantity))} pieces, "
            + $"{Sizes.Text(mass / 1000, 2)} kg empty, {Sizes.Count(report.Build.Welds.Length)} welds. Lengths in "
            + (report.Sizes.Unit == "in" ? "inches; the drawings to cut are in millimetres." : "millimetres."));
        html.Tag(
            "p",
            () =>
            {
                html.Text("A vented vessel, not rated for pressure. ");
                html.Link("#cautions", "Read the cautions before you weld.");
            },
            ("class", "caution"));
    }

    private static void WriteContents(List<ReportSection> sections, Html html) => html.Tag("ul", () =>
    {
        foreach (var section in sections)
            html.Tag("li", () => html.Link($"#{section.Id}", section.Title));
    });

    private static void WriteSection(ReportSection section, ReportContext report, Html html) => html.Tag(
        "section",
        () =>
        {
            html.Tag("h2", section.Title, ("id", $"{section.Id}-head"));
            section.Write(report, html);
        },
        ("id", section.Id),
        ("aria-labelledby", $"{section.Id}-head"));

    private static void WriteOrigin(Build build, Html html)
    {
        html.Tag("p", $"Vessel {build.Options.ToolVersion}. Design file's SHA-256: {build.Options.DesignHash}.");
        if (build.Options.Settings.Variant is { } variant)
            html.Tag("p", $"Variant: {variant}.");
        if (!build.Options.Settings.With.IsEmpty)
            html.Tag("p", $"Set from outside the file: {string.Join(", ", build.Options.Settings.With)}.");
    }
}
