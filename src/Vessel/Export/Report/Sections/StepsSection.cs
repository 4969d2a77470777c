using Vessel.Planning;

namespace Vessel.Export.Report.Sections;

/// <summary>The day's list, to be ticked off: each step after all that it waits for.</summary>
internal static class StepsSection
{
    public static ReportSection Section { get; } = new("steps", "Order of work", Write)
    {
        AppliesTo = report => !report.Build.Plan.Steps.IsEmpty,
    };

    private static void Write(ReportContext report, Html html)
    {
        html.Tag("p", "Ticks are not saved: the boxes are empty again when the page is reopened.");
        html.Tag(
            "ol",
            () =>
            {
                foreach (var step in report.Build.Plan.Steps)
                    html.Tag("li", () => WriteStep(step, html), ("value", Sizes.Count(step.Number)));
            },
            ("class", "steps"));
    }

    private static void WriteStep(Step step, Html html)
    {
        html.Tag("label", () =>
        {
            html.Mark("input", ("type", "checkbox"), ("autocomplete", "off"));
            html.Text(" ");
            html.Tag("strong", step.Kind.ToString());
            html.Text($" {step.What}");
        });
        foreach (var weld in step.Task.Weld is { } one ? [one] : step.Task.Tacked)
        {
            html.Text(" ");
            html.Link($"#weld-{weld.Number}", weld.Number);
        }
    }
}
