using System.Collections.Immutable;
using Vessel.Export.Report.Sections;

namespace Vessel.Export.Report;

/// <summary>A part of the page under a heading of its own.</summary>
/// <param name="Id">Anchor of the section.</param>
/// <param name="Title">Heading of the section, and its word in the list of contents.</param>
/// <param name="Write">Writes what stands under the heading; heads below it begin at <c>h3</c>.</param>
internal sealed record ReportSection(string Id, string Title, Action<ReportContext, Html> Write)
{
    /// <summary>Whether a build has anything to say there.</summary>
    public Func<ReportContext, bool> AppliesTo { get; init; } = _ => true;

    /// <summary>Sections in the order of the page: what must be known first stands first.</summary>
    public static ImmutableArray<ReportSection> All { get; } =
    [
        FindingsSection.Section,
        ModelSection.Section,
        PartsSection.Section,
        SetUpSection.Section,
        StepsSection.Section,
        TimeSection.Section,
        WeldsSection.Section,
        GapsSection.Section,
        ProceduresSection.Section,
        FitsSection.Section,
        CutListSection.Section,
        FunctionSection.Section,
        CapacitySection.Section,
        ChecksSection.Section,
        CautionsSection.Section,
        AssumptionsSection.Section,
        FilesSection.Section,
    ];
}
