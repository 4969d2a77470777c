using Vessel.Export.Pictures;
using Vessel.Export.Report.Drawing;
using Vessel.Export.Report.Model;
using Vessel.Function;
using Vessel.Parts;

namespace Vessel.Export.Report.Sections;

/// <summary>The vessel to look at: with a script the model to turn, without one still pictures.</summary>
internal static class ModelSection
{
    public static ReportSection Section { get; } = new("model", "Model", Write);

    private static void Write(ReportContext report, Html html)
    {
        html.Tag("div", () => WriteViewer(report, html), ("id", "viewer"), ("hidden", string.Empty));
        html.Tag("p", string.Empty, ("id", "model-said"), ("role", "status"));
        var model = report.Pictures.Model;
        foreach (var (built, shown) in model.Parts.Zip(model.Meshes).Where(pair => ShownMesh.LeavesHoles(pair.First, pair.Second)))
            html.Tag("p", $"{built.Part.Name} is shown here without its pattern of holes: they are too many.");
        html.Tag("div", () => WriteStills(report, html), ("class", "stills"));
        html.Tag("script", () => html.Raw(ModelJson.Of(model)), ("type", "application/json"), ("id", "model-data"));
    }

    private static void WriteStills(ReportContext report, Html html)
    {
        html.Tag(
            "figure",
            () =>
            {
                SeamPicture.Write(report.Pictures, html);
                html.Tag("figcaption", "The vessel with its welds; dashed where metal hides them.");
            },
            ("class", "whole"));
        if (!SectionPicture.Has(report.Build.Section))
            return;
        html.Tag("figure", () =>
        {
            SectionPicture.Write(report.Build.Section, html);
            html.Tag("figcaption", "Cut through the axis; welds and threads are not drawn.");
        });
    }

    private static void WriteViewer(ReportContext report, Html html)
    {
        html.Tag(
            "div",
            () =>
            {
                html.Tag(
                    "canvas",
                    string.Empty,
                    ("id", "model-canvas"),
                    ("tabindex", "0"),
                    ("role", "application"),
                    ("aria-label", $"Model of {report.Build.Assembly.Design.Name}"),
                    ("aria-describedby", "model-help"));
                html.Tag("div", string.Empty, ("id", "model-names"), ("aria-hidden", "true"));
            },
            ("class", "stage"));
        html.Tag(
            "p",
            "Drag to turn, two fingers or the wheel to zoom, tap a part to select it. By keyboard, on the picture: arrows turn, "
            + "with Shift they move it, + and - zoom, Home starts again, Escape clears the selection.",
            ("id", "model-help"),
            ("class", "small"));
        html.Tag(
            "div",
            () =>
            {
                WriteViews(html);
                WriteCut(html);
                WriteParts(report, html);
            },
            ("class", "tools"));
    }

    private static void WriteViews(Html html) => Group("Look from", html, () =>
    {
        foreach (var (name, from) in new[] { ("Corner", "-50 24"), ("Front", "0 0"), ("Right", "90 0"), ("Back", "180 0"),
            ("Left", "-90 0"), ("Above", "-90 90"), ("Below", "-90 -90") })
            html.Tag("button", name, ("type", "button"), ("data-from", from));
    });

    private static void WriteCut(Html html) => Group("Cut open and pull apart", html, () =>
    {
        Box(html, "cut", "Cut open");
        Box(html, "cut-level", "Cut level, across the axis");
        Slider(html, "cut-at", "Place of the cut", -100, 100, 0);
        Slider(html, "cut-round", "Cut turned round the axis, deg", 0, 360, 0);
        Slider(html, "apart", "Pulled apart, %", 0, 100, 0);
        Box(html, "names", "Names on the model");
    });

    private static void WriteParts(ReportContext report, Html html) => Group("Parts shown", html, () =>
    {
        foreach (var part in report.Build.Parts.Select(built => built.Part))
            Box(html, $"show-{part.Id}", Counted(part), part.Id);
        html.Tag("button", "All", ("type", "button"), ("id", "show-all"));
        html.Tag("button", "Only the selected part", ("type", "button"), ("id", "show-chosen"));
    }, "many");

    private static string Counted(Part part) => part.Quantity == 1 ? part.Name : $"{part.Name} ({Sizes.Count(part.Quantity)})";

    private static void Group(string name, Html html, Action content, string? kind = null) => html.Tag(
        "fieldset",
        () =>
        {
            html.Tag("legend", name);
            content();
        },
        ("class", kind));

    private static void Box(Html html, string id, string label, string? part = null) => html.Tag("label", () =>
    {
        html.Mark(
            "input", ("type", "checkbox"), ("id", id), ("data-part", part), ("checked", part is null ? null : string.Empty),
            ("autocomplete", "off"));
        html.Text($" {label}");
    });

    private static void Slider(Html html, string id, string label, int low, int high, int value) => html.Tag("label", () =>
    {
        html.Text($"{label} ");
        html.Mark(
            "input", ("type", "range"), ("id", id), ("min", Sizes.Count(low)), ("max", Sizes.Count(high)), ("value", Sizes.Count(value)),
            ("autocomplete", "off"));
    });
}
